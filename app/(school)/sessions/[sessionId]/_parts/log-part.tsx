import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { FormTicks } from '@/app/_components/form/form-choices';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { PackToLog } from '@/lib/sessions/log-packs';
import type { Session } from '@/lib/sessions/session';
import { logPacksAction } from '../actions';

interface LogPartProps { readonly session: Session; readonly register: readonly PackToLog[] }

/** Tick the packs, press one button: a charge, or a crash, more for each. Packs that must not be charged are not among them. */
export function LogPart({ session, register }: LogPartProps) {
  const ready = register.filter(({ notToCharge }) => notToCharge === null);
  const barred = register.filter(({ notToCharge }) => notToCharge !== null);
  const chargesOf = (id: string): number => session.packs.find(({ packId }) => packId === id)?.charges ?? 0;
  return (
    <Section id="log" title="Log packs">
      {ready.length === 0 ? <p>No pack may be charged now. <Link href="/packs" prefetch={false}>What each needs</Link></p> : (
        <ActionForm action={logPacksAction} id="log-packs" faultsTitle="Not logged">
          <FormHidden name="sessionId" value={session.id} />
          <FormHidden name="revision" value={String(session.revision)} />
          <div className="pack-grid"><FormTicks name="packs" legend="Which packs" options={ready.map(({ id, label }) => ({ value: id, label: chargesOf(id) === 0 ? label : `${label} (${chargesOf(id)})` }))} /></div>
          <div className="act-row stick"><FormSubmit name="what" value="charge">They were charged</FormSubmit><FormSubmit kind="outline" name="what" value="crash">They crashed</FormSubmit></div>
        </ActionForm>
      )}
      {barred.length === 0 ? null : (
        <Disclosure summary={`${barred.length === 1 ? 'One pack is' : `${barred.length} packs are`} not to be charged`}>
          <ul className="rows">{barred.map(({ id, label, notToCharge }) => <li key={id}><Link href={`/packs/${id}`} prefetch={false}>{label}</Link><p className="small muted">{notToCharge}</p></li>)}</ul>
          <p className="small">Was one charged all the same? <Link href="/incidents/new" prefetch={false}>Record it as an incident</Link>: nobody is blamed for saying so.</p>
        </Disclosure>
      )}
    </Section>
  );
}
