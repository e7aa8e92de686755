import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import type { VersionRecord } from '@/lib/assessments/version';
import type { Content } from '@/lib/content/model';
import { saveSettingsAction } from './actions';

/** Which matrix grades the risks, and how much effort the suggestions may cost. */
export function SettingsForm({ version, content }: { readonly version: VersionRecord; readonly content: Content }) {
  const { matrix = 'five-by-five', effortBudget = content.defaultEffortBudget } = version.settings;
  return (
    <ActionForm action={saveSettingsAction} id="settings-form">
      <FormHidden name="versionId" value={version.id} />
      <FormChoices
        name="matrix"
        legend="Matrix"
        hint="The grade ranks what is left; how often and how bad stay the same whichever you choose."
        options={[
          { value: 'five-by-five', label: 'Five by five', hint: 'This program’s own' },
          { value: 'mil-std-882e', label: 'MIL-STD-882E', hint: 'A published standard' },
          { value: 'three-by-three', label: 'Three by three' },
        ]}
        value={matrix}
      />
      <FormNumber name="effortBudget" label="Effort that can be spent" unit="points" hint={content.effortRule} value={String(effortBudget)} />
      <p className="row"><FormSubmit>Save</FormSubmit></p>
    </ActionForm>
  );
}
