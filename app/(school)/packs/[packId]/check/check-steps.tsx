'use client';

import { type ReactNode, use, useEffect, useRef, useState } from 'react';
import { FormContext } from '@/app/_components/form/form-context';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Button } from '@/app/_components/ui/button';
import type { FormState } from '@/lib/forms/form-state';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import type { CheckForm } from '@/lib/packs/checks/check-post';
import type { CheckSheet } from '@/lib/packs/checks/check-sheet';
import { CheckFields } from './check-fields';
import { LeaveNow } from './leave-now';

interface CheckStepsProps {
  readonly sheet: CheckSheet;
  readonly unit: TemperatureUnit;
  /** stands where the register is asked */
  readonly register: ReactNode;
}

/**
 * The page of the check that is due, with the answers before it carried along. A sign that means leaving takes the place
 * of everything else at once; without a script it does so when the page is sent.
 */
export function CheckSteps({ sheet, unit, register }: CheckStepsProps) {
  const { state } = use(FormContext);
  const { page, typed } = stepOf(state as FormState<CheckForm>, sheet);
  const [sign, setSign] = useState<string | null>(null);
  const heading = useFocusAfter(state.attempt, state.faults.length === 0);
  const at = sheet.pages.indexOf(page);
  const carried = Object.entries(typed).filter(([name]) => !page.fields.includes(name));
  const before = sheet.pages[at - 1];
  const notice = (name: string, answer: string): void => setSign(sheet.leaveAnswers[name]?.includes(answer) === true ? name : null);
  return (
    <>
      {carried.map(([name, value]) => <FormHidden key={name} name={name} value={value} />)}
      <FormHidden name="page" value={page.id} />
      {sign === null ? null : <LeaveNow sheet={sheet} onSlip={() => setSign(null)} sign={sign} />}
      <div hidden={sign !== null} className="stack fields">
        <p className="small muted">Step {at + 1} of {sheet.pages.length}</p>
        <h2 ref={heading} tabIndex={-1}>{page.title}</h2>
        {page.hows.map(({ title, how }) => <p key={title}>{page.hows.length > 1 ? <b>{title}. </b> : null}{how}</p>)}
        <CheckFields page={page} sheet={sheet} unit={unit} typed={typed} register={register} onAnswer={notice} />
        <div className="actions">
          <FormSubmit>{at === sheet.pages.length - 1 ? 'Finish the check' : 'Next'}</FormSubmit>
          {before === undefined ? null : <Button type="submit" kind="plain" name="back" value={before.id}>Back to: {before.title}</Button>}
        </div>
      </div>
    </>
  );
}

/** Fields that steer the form and are no answers. */
const STEERING: readonly string[] = ['packId', 'page', 'back'];

/** The page that is due: the one the last answer of the server names, or the one that came back with faults. */
function stepOf(state: FormState<CheckForm>, sheet: CheckSheet) {
  const sent = Object.fromEntries(Object.entries(state.typed).flatMap(([name, value]): [string, string][] => (typeof value === 'string' ? [[name, value]] : [])));
  const page = sheet.pages.find(({ id }) => id === (state.data?.page ?? sent['page'])) ?? sheet.pages[0];
  if (page === undefined) throw new Error('a check has no page');
  return { page, typed: state.data?.typed ?? Object.fromEntries(Object.entries(sent).filter(([name]) => !STEERING.includes(name))) };
}

/** After each page the heading of the next one takes focus, so that it is read out and the page begins at its top. */
function useFocusAfter(attempt: number, wanted: boolean) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (attempt > 0 && wanted) heading.current?.focus();
  }, [attempt, wanted]);
  return heading;
}
