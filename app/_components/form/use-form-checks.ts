import { type FocusEvent, type FormEvent, type RefObject, useEffect, useMemo, useState } from 'react';
import { type FieldValues, useForm, type UseFormReturn } from 'react-hook-form';
import type { Fault, FormState } from '@/lib/forms/form-state';
import { type CheckedHere, checkHere, errorKey, errorsOfAnswer, faultsHere, foundHere } from './check-here';
import { type FormCheck, loadCheck } from './form-check-list';
import { useAfterPress } from './use-after-press';

interface FormChecks {
  /** of a field now: what the server answered, or what the browser found since */
  readonly errorOf: (name: string) => string | undefined;
  /** for the summary, as it was when the form was sent last */
  readonly faults: readonly Fault[];
  /** counts answers and refusals, so that focus goes to the summary each time */
  readonly attempt: number;
  readonly isChecking: boolean;
  /** for the form element */
  readonly watched: WatchedFields;
  /** checks the whole form, and sends it or says what is wrong */
  readonly checkAll: (send: () => void) => void;
}

const NOTHING_REFUSED = { count: 0, after: -1, faults: [] as readonly Fault[] };
const WHEN = { mode: 'onTouched', reValidateMode: 'onChange', shouldFocusError: false } as const;

/**
 * Which error stands at which field, and when a field is looked at: when it is left, then with every change. What is
 * typed stays in the page; React Hook Form is told of it by name, so that fields work the same where no script runs.
 */
export function useFormChecks(form: RefObject<HTMLFormElement | null>, check: FormCheck | undefined, state: FormState<unknown>): FormChecks {
  const here: CheckedHere = { form, check };
  const answered = useMemo(() => errorsOfAnswer(state.faults), [state.faults]);
  const hookForm = useForm<FieldValues, CheckedHere>({ ...WHEN, resolver: checkHere, context: here, errors: answered });
  const { formState, getFieldState, handleSubmit, reset } = hookForm;
  const { errors, isSubmitting } = formState;
  const [refused, setRefused] = useState(NOTHING_REFUSED);
  const afterPress = useAfterPress();
  // Before the first field is left, so that nobody waits for it then.
  useEffect(() => { if (check !== undefined) void loadCheck(check); }, [check]);
  // What was saved and stays on the page is a form nobody has touched yet.
  useEffect(() => { if (state.done !== undefined) reset(); }, [state, reset]);
  return {
    errorOf: (name) => getFieldState(errorKey(name), formState).error?.message,
    faults: refused.after === state.attempt ? refused.faults : state.faults,
    attempt: state.attempt + refused.count,
    isChecking: isSubmitting,
    watched: check === undefined ? {} : watchFields(hookForm, foundHere(errors), afterPress),
    checkAll: (send) => {
      void handleSubmit(send, async () => {
        const faults = await faultsHere(here);
        setRefused(({ count }) => ({ count: count + 1, after: state.attempt, faults }));
      })();
    },
  };
}

interface WatchedFields {
  readonly onBlur?: (event: FocusEvent<HTMLFormElement>) => void;
  readonly onChange?: (event: FormEvent<HTMLFormElement>) => void;
}

/** Tells React Hook Form which field was left or changed, and has it look again at what it found at others. */
function watchFields({ register, trigger }: UseFormReturn<FieldValues, CheckedHere>, found: readonly string[], afterPress: (work: () => void) => void): WatchedFields {
  return {
    onBlur: ({ target, relatedTarget }) => {
      const key = keyOf(target);
      // Another window, or another choice of the same question: the field is not left.
      if (key === null || key === keyOf(relatedTarget) || !document.hasFocus()) return;
      afterPress(() => { void register(key).onBlur({ type: 'blur', target: { name: key } }); });
    },
    onChange: ({ target }) => {
      const key = keyOf(target);
      if (key === null) return;
      void register(key).onChange({ type: 'change', target: { name: key } });
      const others = found.filter((other) => other !== key);
      if (others.length > 0) void trigger(others);
    },
  };
}

function keyOf(target: EventTarget | null): string | null {
  const name = target instanceof Element ? target.getAttribute('name') : null;
  return name === null || name === '' ? null : errorKey(name);
}
