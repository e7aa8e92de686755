import { ButtonLink } from '@/app/_components/ui/button';
import { Notice, StopList } from '@/app/_components/ui/notice';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { urgentOf } from '@/lib/incidents/urgent';

interface SavedPartProps { readonly incident: IncidentRecord; /** how it was saved just now, out of the address */ readonly saved: string | undefined }

const TITLES = { 'fire-service': 'Was the fire service called?', ambulance: 'Is somebody hurt?', doctor: 'A doctor, the same day' } as const;

/** What was done by saving, and what cannot wait. */
export function SavedPart({ incident, saved }: SavedPartProps) {
  const { number, packs, unknownLabels, facts, state } = incident;
  const isolated = packs.filter((pack) => pack.state === 'isolated').map(({ label }) => label);
  const urgent = state === 'closed' ? [] : urgentOf(facts);
  return (
    <div className="stack list-tools">
      {saved === undefined ? null : (
        <Notice level={2} kind="done" title={`Saved as incident ${number}.`}>
          <p>{isolated.length === 0 ? '' : `Marked isolated in the register: ${isolated.join(', ')}. `}{saved === 'without-photo' ? 'A photo could not be read and was left out; add it below as JPEG, PNG or WebP.' : ''}</p>
        </Notice>
      )}
      {unknownLabels.length === 0 ? null : <Notice level={2} kind="not sure" title={`Not in the register: ${unknownLabels.join(', ')}`}><p>No pack of the school has this label, so none was marked isolated. Correct the label below, or add the pack to the register.</p></Notice>}
      {urgent.length === 0 ? null : (
        <section aria-labelledby="urgent-title">
          <h2 className="vh" id="urgent-title">What cannot wait</h2>
          <StopList stops={urgent.map(({ id, words }) => ({ id, title: TITLES[id], why: words, action: <ButtonLink kind="now" href={id === 'doctor' ? '/emergency/ill' : '/emergency'}>What to do now</ButtonLink> }))} />
        </section>
      )}
    </div>
  );
}
