import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { scopeFingerprint, type VersionRecord } from '@/lib/assessments/version';
import { saveScopeAction } from './actions';

/** Who went there, what was seen and what was taken on trust: it stands on the first page of the paper. */
export function VisitForm({ version }: { readonly version: VersionRecord }) {
  const { visited, visitedOn, scope } = version;
  return (
    <ActionForm action={saveScopeAction} id="visit-form">
      <FormHidden name="versionId" value={version.id} />
      <FormHidden name="before" value={scopeFingerprint(version)} />
      <FormChoices name="visited" legend="Has somebody been at the place for this?" options={[{ value: 'yes', label: 'Yes' }, { value: 'no', label: 'No', hint: 'Then the paper says that everything was taken on trust.' }]} value={visited === null ? undefined : visited ? 'yes' : 'no'} />
      <FormLine name="visitedOn" label="On which day" type="date" value={visitedOn ?? ''} />
      <FormLine name="visitedBy" label="By whom" hint="Name and post of each adult; of students only how many" value={scope.visitedBy} />
      <FormText name="seen" label="What was seen" rows={3} value={scope.seen} />
      <FormText name="onTrust" label="What was taken on trust" hint="Such as what a caretaker or an earlier paper says" rows={3} value={scope.onTrust} />
      <p className="row"><FormSubmit>Save</FormSubmit></p>
    </ActionForm>
  );
}
