import { rightWrongPack, type WrongPack } from '@/lib/incidents/wrong-pack';
import { isolationOf } from '@/lib/packs/pack-history';
import { type NewState, stateChanged } from '@/lib/packs/states/new-state';
import type { Db } from '../client';
import { packHistory } from '../packs/read-packs';
import { writeState } from '../packs/write-pack';
import type { Member } from '../people/find-member';
import { addCorrection } from './add-correction';
import { changeIncident, type IncidentChanged, refused } from './change-incident';
import { linkPacks } from './link-packs';

/**
 * Corrects an incident that names the wrong pack, and takes that pack out of isolation: both with the log, or neither.
 * What was recorded first stays, and so does the pack's time in isolation.
 */
export async function rightPackOfIncident(db: Db, by: Member, at: Date, input: WrongPack): Promise<IncidentChanged> {
  return changeIncident(db, by, at, { incidentId: input.incidentId, may: 'incident.close' }, async (writing, incident) => {
    const history = await packHistory(writing.tx, writing.scope, input.packId);
    if (history === null) return refused(['Your register has no such pack']);
    const decision = rightWrongPack(incident, { label: history.pack.label, isolation: isolationOf(history)?.changes ?? null }, input);
    if (!decision.ok) return refused(decision.why);
    const { before, after, added, to, reason } = decision.change;
    const number = await addCorrection(writing, incident, { field: 'packs', before, after, reason: `Wrong pack named. ${input.reason}` });
    const isolated = await linkPacks(writing, { incidentId: incident.id, number: incident.number }, added);
    const state: NewState = { to, reason, cause: null, incidentId: incident.id };
    await writeState(writing, history.pack, state);
    return { ok: true, events: [{ kind: 'incident.corrected', subjectId: incident.id, data: { number, field: 'packs', reason: input.reason } }, stateChanged(history.pack, state), ...isolated] };
  });
}
