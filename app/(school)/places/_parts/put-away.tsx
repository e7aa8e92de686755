import { ActionForm } from '@/app/_components/form/action-form';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { FormAction } from '@/lib/forms/form-state';

interface PutAwayProps {
  readonly action: FormAction;
  readonly ids: Readonly<Record<string, string>>;
  readonly what: string;
}

/** Asks before a place is put away; what refers to it goes on naming it. */
export function PutAway({ action, ids, what }: PutAwayProps) {
  return (
    <Section id="put-away" title="No longer used?">
      <Disclosure summary={`Put ${what} away`}>
        <ActionForm action={action} id="put-away-form" faultsTitle="Not put away">
          {Object.entries(ids).map(([name, value]) => <FormHidden key={name} name={name} value={value} />)}
          <p>It is no longer offered. Papers, packs and incidents that name it go on naming it, and its name stays taken.</p>
          <FormTicks name="sure" legend="Are you sure?" options={[{ value: 'yes', label: `Yes, put ${what} away` }]} />
          <p className="row"><FormSubmit kind="danger">Put it away</FormSubmit></p>
        </ActionForm>
      </Disclosure>
    </Section>
  );
}
