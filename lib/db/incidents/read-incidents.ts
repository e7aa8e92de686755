import { factsNow } from '@/lib/incidents/facts';
import type { IncidentRecord, LinkedPack } from '@/lib/incidents/incident';
import type { ListedIncident } from '@/lib/incidents/incident-list';
import { incidentStateOf } from '@/lib/incidents/standing';
import { labelKey } from '@/lib/packs/pack';
import { placeOfIsolated } from '@/lib/packs/pack-history';
import { changeOfRow, NEWEST_FIRST, packOfRow } from '../packs/rows';
import type { Prisma } from '../generated/sqlite/client';
import { rowOf, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import { correctionOfRow, firstFactsOf, followUpOfRow, listedOfRow, WITH_FACTS } from './rows';

/** The incidents of a school, the latest first; only those one person recorded when `byId` is given. */
export async function listIncidents(db: Pick<Tx, 'incident'>, scope: SchoolScope, byId: string | null): Promise<readonly ListedIncident[]> {
  const rows = await db.incident.findMany({ where: { ...scope, ...(byId === null ? {} : { byId }) }, include: WITH_FACTS, orderBy: { number: 'desc' } });
  return rows.map(listedOfRow);
}

const WITH_ALL = {
  ...WITH_FACTS,
  persons: { orderBy: { id: 'asc' } },
  photos: { orderBy: { id: 'asc' }, include: { file: { select: { byName: true, widthPx: true, heightPx: true } } } },
  packs: { orderBy: { id: 'asc' }, include: { pack: { include: { stateChanges: { orderBy: [...NEWEST_FIRST] } } } } },
  followUps: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
  actions: { orderBy: [{ dueOn: 'asc' }, { id: 'asc' }] },
  reviewRequests: { orderBy: { id: 'asc' }, include: { version: { select: { assessment: { select: { title: true } } } } } },
} satisfies Prisma.IncidentInclude;

/** An incident, or null when the school has none of this id. */
export async function findIncident(db: Pick<Tx, 'incident'>, scope: SchoolScope, id: string): Promise<IncidentRecord | null> {
  const row = await db.incident.findUnique({ where: rowOf(scope, id), include: WITH_ALL });
  if (row === null) return null;
  const corrections = row.corrections.map(correctionOfRow);
  const first = firstFactsOf(row);
  const facts = factsNow(first, corrections);
  const linked = new Map(row.packs.flatMap(({ pack }) => (pack === null ? [] : [[pack.id, linkedPack(pack)] as const])));
  return {
    id, number: row.number, state: incidentStateOf(row.state), revision: row.revision, first, facts, corrections,
    followUps: row.followUps.map(followUpOfRow),
    persons: row.persons, photos: row.photos.map(({ file, ...photo }) => ({ ...photo, byName: file.byName, widthPx: file.widthPx ?? 1, heightPx: file.heightPx ?? 1 })),
    packs: [...linked.values()].filter(({ label, state }) => state === 'isolated' || isNamed(facts.packs, label)), unknownLabels: row.packs.filter(({ packId }) => packId === null).map(({ label }) => label),
    actions: row.actions, reviews: row.reviewRequests.map(({ versionId, version, settledAt }) => ({ versionId, title: version.assessment.title, settledAt })),
    byId: row.byId, byName: row.byName, recordedAt: row.recordedAt, closedAt: row.closedAt, closedNote: row.closedNote,
  };
}

/** One that a correction took out of the incident stays in its list while it is isolated. */
function isNamed(packs: readonly { readonly label: string }[], label: string): boolean {
  return packs.some((pack) => labelKey(pack.label) === labelKey(label));
}

type PackRow = Parameters<typeof packOfRow>[0] & { readonly stateChanges: readonly Parameters<typeof changeOfRow>[0][] };

function linkedPack({ stateChanges, ...columns }: PackRow): LinkedPack {
  const history = { pack: packOfRow(columns), changes: stateChanges.map(changeOfRow) };
  const place = placeOfIsolated(history);
  return { packId: history.pack.id, label: history.pack.label, state: history.pack.state, placeNow: place?.placeNow ?? null, placeNote: place?.placeNote ?? null };
}
