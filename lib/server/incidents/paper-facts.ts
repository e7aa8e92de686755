import 'server-only';
import { labelOf } from '@/lib/forms/choices';
import { openEnds } from '@/lib/incidents/close-incident';
import { AFFECTED_ROLES, YES_NO } from '@/lib/incidents/choices';
import { FACT_NAMES, FACT_TITLES } from '@/lib/incidents/facts';
import { FOLLOW_UP_TITLES } from '@/lib/incidents/follow-up-titles';
import { type IncidentRecord, standingOf } from '@/lib/incidents/incident';
import { incidentTitle } from '@/lib/incidents/incident-list';
import { type FactNames, sayCorrected, sayFact } from '@/lib/incidents/say-fact';
import { incidentStateWords } from '@/lib/incidents/standing';
import { isPackState, stateWords } from '@/lib/packs/states/pack-states';
import type { IncidentPaperFacts } from '@/lib/papers/incident-paper';
import { CAUTION } from '@/lib/wording/caution';
import { calendarDayWords, momentWords } from '@/lib/wording/dates';
import { PACK_LIMITS } from '../packs/pack-limits';

/** What a paper needs besides the incident: its number, whose it is, who signs it. */
export type PaperOfIncident = Pick<IncidentPaperFacts, 'number' | 'school' | 'format' | 'language' | 'madeAt' | 'fingerprint' | 'verifyAt' | 'twinAt' | 'logEnd' | 'officer' | 'photoHashes'> & {
  readonly names: FactNames;
  readonly riskTitle: (risk: string) => string;
};

/** Returns an incident in the words of its paper, with what was said first beside what is said now. */
export function incidentPaperFacts(incident: IncidentRecord, { names, riskTitle, ...paper }: PaperOfIncident): IncidentPaperFacts {
  const { facts, state, byName, recordedAt, actions, reviews } = incident;
  return {
    ...paper, incidentNumber: incident.number, title: incidentTitle(facts), when: sayFact('when', facts, names), state: incidentStateWords(state), caution: CAUTION, recordedBy: `${byName}, ${momentWords(recordedAt, names.dates)}`,
    facts: FACT_NAMES.map((name) => ({
      name: FACT_TITLES[name],
      value: sayFact(name, facts, names),
      corrections: incident.corrections.filter(({ field }) => field === name).map(({ before, byName: by, at, reason }) => `Before: ${sayCorrected(name, before, names)}. Corrected by ${by}, ${momentWords(at, names.dates)}: ${reason}.`),
    })),
    packs: incident.packs.map((pack) => ({ label: pack.label, state: isPackState(pack.state) ? stateWords(pack.state) : pack.state, place: placeWords(pack) })),
    persons: incident.persons.filter(({ removedAt }) => removedAt === null).map(({ role, initials, hurt, breathed, firstAid }) => ({ who: [labelOf(AFFECTED_ROLES, role), ...(initials === null ? [] : [initials])].join(', '), hurt: labelOf(YES_NO, hurt), breathed: labelOf(YES_NO, breathed), firstAid: firstAid ?? 'Nothing written' })),
    followUps: incident.followUps.map(({ kind, text, byName: by, at }) => ({ title: FOLLOW_UP_TITLES[kind], words: kind === 'risk' ? riskTitle(text) : text, by: `${by}, ${momentWords(at, names.dates)}` })),
    actions: actions.map(({ title, ownerName, dueOn, state: actionState }) => ({ title, owner: ownerName, due: calendarDayWords(dueOn, names.dates), state: actionState })),
    reviews: reviews.map(({ title, settledAt }) => `${title}${settledAt === null ? '' : ' (reviewed since)'}`),
    open: state === 'closed' ? [] : openEnds(standingOf(incident)),
  };
}

function placeWords({ placeNow, placeNote }: IncidentRecord['packs'][number]): string {
  const label = PACK_LIMITS.check?.isolation.places.find(({ id }) => id === placeNow)?.label ?? 'nobody has said';
  return placeNote === null ? label : `${label}, ${placeNote}`;
}
