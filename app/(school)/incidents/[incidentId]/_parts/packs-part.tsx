import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { PackStateMark, PackStateShapes } from '@/app/_components/packs/pack-state-mark';
import { Section } from '@/app/_components/ui/section';
import { type IncidentRecord, isUnplaced, type LinkedPack } from '@/lib/incidents/incident';
import { isPackState } from '@/lib/packs/states/pack-states';
import { PACK_LIMITS } from '@/lib/server/packs/pack-limits';
import { placePackAction } from '../actions';
import { WrongPack } from './wrong-pack';

const ISOLATION = PACK_LIMITS.check?.isolation;

/** The packs of an incident, and where each one is: the register has moved nothing. */
export function PacksPart({ incident, mayRight }: { readonly incident: IncidentRecord; readonly mayRight: boolean }) {
  const { packs, facts } = incident;
  if (packs.length === 0) return null;
  const nearby = facts.packs.some(({ part }) => part === 'nearby');
  return (
    <Section id="packs" title={packs.some(isUnplaced) ? 'Where is each pack now?' : 'The packs'}>
      <PackStateShapes />
      {packs.some(isUnplaced) ? <p>{ISOLATION?.words} Say what is so. Nobody needs to go and look.</p> : null}
      <ul className="rows list-tools">{packs.map((pack) => <li key={pack.packId}><PackRow pack={pack} />{mayRight && pack.state === 'isolated' ? <WrongPack incidentId={incident.id} packId={pack.packId} label={pack.label} /> : null}</li>)}</ul>
      {nearby ? <p className="small muted">{PACK_LIMITS.check?.release.words} That is done on the page of the pack.</p> : null}
    </Section>
  );
}

function PackRow({ pack }: { readonly pack: LinkedPack }) {
  return (
    <div className="stack">
      <p>
        <Link href={`/packs/${pack.packId}`} prefetch={false}><b>{pack.label}</b></Link>{' '}
        {isPackState(pack.state) ? <PackStateMark state={pack.state} /> : pack.state}{' '}
        {placeWords(pack)}
      </p>
      {isUnplaced(pack) ? <PlaceForm pack={pack} /> : null}
    </div>
  );
}

function placeWords({ placeNow, placeNote }: LinkedPack): string {
  const label = ISOLATION?.places.find(({ id }) => id === placeNow)?.label;
  if (label === undefined) return '';
  return placeNote === null ? label : `${label}, ${placeNote}`;
}

function PlaceForm({ pack: { packId, label } }: { readonly pack: LinkedPack }) {
  return (
    <ActionForm action={placePackAction} id={`place-${packId}`} faultsTitle="Not saved yet. Look at this again">
      <FormHidden name="packId" value={packId} />
      <FormChoices name="placeNow" legend={`${label} is`} options={(ISOLATION?.places ?? []).map((place) => ({ value: place.id, label: place.label }))} />
      <FormLine name="placeNote" label="More about the place (may stay empty)" autoComplete="off" />
      <p className="row"><FormSubmit kind="outline">Keep where {label} is</FormSubmit></p>
    </ActionForm>
  );
}
