import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Notice } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import { can } from '@/lib/access/can';
import type { Pack } from '@/lib/packs/pack';
import type { PackHistory } from '@/lib/packs/pack-history';
import { MOVES, type Move } from '@/lib/packs/states/moves';
import { mayReleasePack } from '@/lib/packs/states/release-pack';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { movePackAction } from '../actions';

interface StatePartProps { readonly history: PackHistory; readonly limits: SchoolPackLimits; readonly role: string }

/** The changes of state this person may make, each with what it asks. */
export function StatePart({ history, limits, role }: StatePartProps) {
  const { pack } = history;
  const moves = MOVES.filter(({ from, action }) => from === pack.state && can(role, action));
  if (moves.length === 0) return null;
  return (
    <Section id="state" title="Change its state">
      {moves.map((move) => (
        <Disclosure key={move.to} summary={move.verb}>
          {move.action === 'pack.release' ? <ReleaseWords history={history} limits={limits} role={role} /> : null}
          <MoveForm pack={pack} move={move} />
        </Disclosure>
      ))}
    </Section>
  );
}

/** What the rules say to a release before somebody asks for it; a reason is written in the form. */
function ReleaseWords({ history, limits, role }: StatePartProps) {
  const may = mayReleasePack(limits, history, 'asked beforehand', role);
  const rule = limits.check?.release.words;
  return may.ok ? <Notice level={3} kind="done" title="It may be released">{rule}</Notice> : <Notice level={3} title="Not now"><p>{rule}</p><p>{may.reason}.</p></Notice>;
}

function MoveForm({ pack, move }: { readonly pack: Pack; readonly move: Move }) {
  return (
    <ActionForm action={movePackAction} id={`to-${move.to}`} faultsTitle="State not changed">
      <FormHidden name="packId" value={pack.id} />
      <FormHidden name="to" value={move.to} />
      {move.to === 'isolated' ? <CauseField /> : null}
      {move.to === 'handed-over' ? <ReceiverFields /> : null}
      <FormLine name="reason" label="Reason" hint="What you saw, or what was done. It stays in the log." autoComplete="off" />
      <p className="row"><FormSubmit kind="outline">{move.verb}</FormSubmit></p>
    </ActionForm>
  );
}

function CauseField() {
  const options = [
    { value: 'sign', label: 'It showed a sign itself', hint: 'Swollen, hit, dented, hot, wet, a smell, odd voltages: never released' },
    { value: 'nearby', label: 'It only lay near another', hint: 'The officer may release it later, by the rules' },
    { value: 'incident', label: 'It was in an incident' },
  ];
  return <FormChoices name="cause" legend="Why is it isolated?" options={options} />;
}

function ReceiverFields() {
  return (
    <>
      <p className="small">Damaged packs do not go by post, public transport, school bus or with students. Ask the collection point first.</p>
      <FormLine name="collectedBy" label="Collection point or carrier" autoComplete="off" />
      <FormLine name="receiverName" label="Who received it" autoComplete="off" />
    </>
  );
}
