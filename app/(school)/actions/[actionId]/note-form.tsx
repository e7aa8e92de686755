import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import type { FormAction } from '@/lib/forms/form-state';

interface NoteFormProps {
  readonly action: FormAction;
  readonly id: string;
  readonly actionId: string;
  readonly label: string;
  readonly hint?: string;
  readonly submit: string;
  readonly kind?: 'main' | 'outline';
}

/** Closing and opening again go with a word. */
export function NoteForm({ action, id, actionId, label, hint, submit, kind = 'main' }: NoteFormProps) {
  return (
    <ActionForm action={action} id={id} faultsTitle="Not saved yet">
      <FormHidden name="actionId" value={actionId} />
      <FormText name="note" label={label} hint={hint} rows={3} />
      <p className="row"><FormSubmit kind={kind}>{submit}</FormSubmit></p>
    </ActionForm>
  );
}
