import { z } from 'zod';
import { type Correction, FactsSchema, type Facts, factsNow } from '@/lib/incidents/facts';
import type { ListedIncident } from '@/lib/incidents/incident-list';
import { FOLLOW_UP_KINDS, type FollowUp, incidentStateOf } from '@/lib/incidents/standing';
import type { Prisma } from '../generated/sqlite/client';

/** What every reading of an incident needs, to say its facts as they are now. */
export const WITH_FACTS = {
  kinds: { orderBy: { kind: 'asc' } },
  packs: { orderBy: { id: 'asc' } },
  corrections: { orderBy: { number: 'asc' } },
} as const satisfies Prisma.IncidentInclude;

export type IncidentRow = Prisma.IncidentGetPayload<{ include: typeof WITH_FACTS }>;

/** The facts as they were first recorded. Throws when the row does not hold what this program writes. */
export function firstFactsOf(row: IncidentRow): Facts {
  // A correction adds rows of packs; what stood there first is in the first one.
  const corrected = row.corrections.find(({ field }) => field === 'packs');
  return FactsSchema.parse({
    called: kept(row.calledJson),
    hurt: row.hurt,
    breathed: row.breathed,
    kinds: row.kinds.map(({ kind }) => kind),
    packs: corrected === undefined ? row.packs.map(({ label, part }) => ({ label, part })) : kept(corrected.beforeJson),
    when: { at: row.happenedAt.toISOString(), known: row.timeKnown },
    where: { siteId: row.siteId, areaId: row.areaId, place: row.place },
    doing: row.doing,
    whatHappened: row.whatHappened === '' ? null : row.whatHappened,
    firstAid: row.firstAid,
    whatWasDone: row.whatWasDone,
    contacted: kept(row.contactedJson),
  });
}

/** The columns of the facts. Kinds and packs are rows of their own. */
export function columnsOfFacts(facts: Facts) {
  const { when, where, doing, hurt, breathed, called, contacted, whatHappened, firstAid, whatWasDone } = facts;
  return {
    happenedAt: new Date(when.at), timeKnown: when.known, ...where, doing, hurt, breathed, firstAid, whatWasDone,
    calledJson: JSON.stringify(called), contactedJson: JSON.stringify(contacted), whatHappened: whatHappened ?? '',
  };
}

export function correctionOfRow({ number, field, beforeJson, afterJson, reason, byName, at }: IncidentRow['corrections'][number]): Correction {
  return { number, field, before: kept(beforeJson), after: kept(afterJson), reason, byName, at };
}

export function followUpOfRow({ kind, text, byName, at }: { readonly kind: string; readonly text: string; readonly byName: string; readonly at: Date }): FollowUp {
  return { kind: z.enum(FOLLOW_UP_KINDS).parse(kind), text, byName, at };
}

export function listedOfRow(row: IncidentRow): ListedIncident {
  const { id, number, state, byName, recordedAt, closedAt } = row;
  return { id, number, state: incidentStateOf(state), facts: factsNow(firstFactsOf(row), row.corrections.map(correctionOfRow)), byName, recordedAt, closedAt };
}

/** Text of a column, of which the caller checks the shape. */
function kept(json: string): unknown {
  return JSON.parse(json);
}
