import { type Decision, type FollowUp, type IncidentStanding, type IncidentState, NOT_OPEN, riskOf } from './standing';

interface Moved { readonly to: IncidentState; readonly followUp: Pick<FollowUp, 'kind' | 'text'> }

/**
 * What still stands in the way of closing: an incident is closed when it is known what it was, why, where every pack is
 * and what is done so that it does not come again.
 */
export function openEnds({ facts, followUps, actions, packsUnplaced }: Omit<IncidentStanding, 'state'>): readonly string[] {
  const has = (kind: FollowUp['kind']) => followUps.some((followUp) => followUp.kind === kind);
  return [
    ...unless(has('cause'), 'Write the cause, or that it could not be found'),
    ...unless(actions > 0 || has('measure'), 'Add a corrective action, or write what was done instead'),
    ...unless(riskOf(followUps) !== null, 'Say which risk of the assessment it belongs to, or to none'),
    ...unless(facts.hurt !== 'not-sure', 'Find out whether anybody was hurt, and correct it'),
    ...unless(facts.breathed !== 'not-sure', 'Find out whether anybody breathed smoke, and correct it'),
    ...unless(packsUnplaced.length === 0, `Say where it is now: ${packsUnplaced.join(', ')}`),
  ];
}

/** The officer closes it, with a note. */
export function closeIncident(standing: IncidentStanding, note: string): Decision<Moved> {
  if (standing.state === 'closed') return { ok: false, why: ['It is closed already'] };
  const why = openEnds(standing);
  return why.length > 0 ? { ok: false, why } : { ok: true, change: { to: 'closed', followUp: { kind: 'closed', text: note } } };
}

/** The officer opens it again, with a reason. */
export function reopenIncident({ state }: Pick<IncidentStanding, 'state'>, reason: string): Decision<Moved> {
  return state === 'closed' ? { ok: true, change: { to: 'in-review', followUp: { kind: 'reopened', text: reason } } } : { ok: false, why: ['It is not closed'] };
}

/** Something added later. What the officer adds begins the review. */
export function addFollowUp({ state }: Pick<IncidentStanding, 'state'>, followUp: Pick<FollowUp, 'kind' | 'text'>, byOfficer: boolean): Decision<Moved> {
  if (state === 'closed') return { ok: false, why: [NOT_OPEN] };
  return { ok: true, change: { to: byOfficer ? 'in-review' : state, followUp } };
}

const unless = (holds: boolean, reason: string): readonly string[] => (holds ? [] : [reason]);
