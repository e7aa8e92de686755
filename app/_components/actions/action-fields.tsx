import { FormLine, FormSelect, FormText, type Option } from '@/app/_components/form/form-fields';

interface ActionFieldsProps {
  readonly owners: readonly Option[];
  readonly title: string;
  readonly details?: string;
  readonly ownerId?: string;
  readonly ownerName?: string;
  readonly dueOn?: string;
}

/** What, who, by when: for adding an action and for changing it. */
export function ActionFields({ owners, title, details, ownerId = '', ownerName, dueOn }: ActionFieldsProps) {
  return (
    <>
      <FormLine name="title" label="What is to be done" value={title} maxLength={200} />
      <FormSelect name="ownerId" label="Who does it" value={ownerId} options={[{ value: '', label: 'Somebody without an account' }, ...owners]} />
      <FormLine name="ownerName" label="Their name, if they have no account" hint="Such as the caretaker" value={ownerName} maxLength={100} autoComplete="off" />
      <FormLine name="dueOn" label="By" type="date" value={dueOn} />
      <FormText name="details" label="Details" hint="May stay empty" value={details} rows={3} />
    </>
  );
}
