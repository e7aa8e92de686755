import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { FormAction } from '@/lib/forms/form-state';

interface BringBackProps {
  readonly action: FormAction;
  /** what the form sends besides the id */
  readonly ids?: Readonly<Record<string, string>>;
  /** name of the field that holds the id */
  readonly field: 'siteId' | 'areaId';
  readonly places: readonly { readonly id: string; readonly name: string; readonly when: string }[];
}

/** What was put away can be had again; nothing of it was lost. */
export function BringBack({ action, ids = {}, field, places }: BringBackProps) {
  if (places.length === 0) return null;
  return (
    <Section id="put-away-before" title="Put away">
      <ul className="rows">
        {places.map(({ id, name, when }) => (
          <li key={id}>
            <ActionForm action={action} id={`back-${id}`} faultsTitle="Not brought back">
              {Object.entries({ ...ids, [field]: id }).map(([key, value]) => <FormHidden key={key} name={key} value={value} />)}
              <p className="row"><span>{name}, put away {when}</span> <FormSubmit kind="outline" size="small">Use it again<span className="vh">: {name}</span></FormSubmit></p>
            </ActionForm>
          </li>
        ))}
      </ul>
    </Section>
  );
}
