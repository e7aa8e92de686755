import { CellVoltsSchema, CHECK_PURPOSES, CheckResultSchema, type CheckPurpose, type CheckRecord, MeasuresSchema, ResistanceSchema } from '@/lib/packs/checks/check-record';
import { detailsOf } from '@/lib/packs/copy-pack';
import { ISOLATION_CAUSES, type IsolationCause, labelKey, type Pack, type PackDetails, type StateChange } from '@/lib/packs/pack';
import { isPackState, type PackState } from '@/lib/packs/states/pack-states';
import type { Prisma } from '../generated/sqlite/client';

type PackRow = Prisma.PackGetPayload<object>;
type ChangeRow = Prisma.PackStateChangeGetPayload<object>;
type CheckRow = Prisma.PackCheckGetPayload<object>;

/** Newest first; ids of one moment are in the order they were made. */
export const NEWEST_FIRST = [{ at: 'desc' }, { id: 'desc' }] as const;

export function packOfRow(row: PackRow): Pack {
  const { id, siteId, stateReason, stateSince, createdAt, revision } = row;
  return { ...detailsOf(row), id, siteId, state: stateOf(row.state), stateReason, stateSince, createdAt, revision };
}

export function changeOfRow({ fromState, toState, ...row }: ChangeRow): StateChange {
  return {
    id: row.id, from: fromState === null ? null : stateOf(fromState), to: stateOf(toState), reason: row.reason, cause: causeOf(row.cause),
    placeNow: row.placeNow, placeNote: row.placeNote, inSand: row.inSand, checkId: row.checkId, incidentId: row.incidentId, byName: row.byName, at: row.at,
  };
}

/** Throws when the row does not hold what this program writes: a check that cannot be read must not look like none. */
export function checkOfRow(row: CheckRow): CheckRecord {
  return {
    id: row.id, purpose: purposeOf(row.purpose), contentVersion: row.contentVersion, note: row.note, byName: row.byName, at: row.at,
    measures: MeasuresSchema.parse(JSON.parse(row.measuresJson)),
    cellVolts: CellVoltsSchema.parse(JSON.parse(row.cellVoltsJson)),
    resistance: ResistanceSchema.parse(JSON.parse(row.resistanceJson)),
    result: CheckResultSchema.parse(JSON.parse(row.resultJson)),
  };
}

/** The details of a pack as columns. */
export function detailColumns(details: PackDetails) {
  return { ...detailsOf(details), labelKey: labelKey(details.label) };
}

function stateOf(word: string): PackState {
  if (!isPackState(word)) throw new Error(`Unknown state ${word} of a pack in the database`);
  return word;
}

/** A cause this edition does not know counts as a sign of the pack's own: it bars release. */
function causeOf(word: string | null): IsolationCause | null {
  return word === null ? null : (ISOLATION_CAUSES.find((cause) => cause === word) ?? 'sign');
}

function purposeOf(word: string): CheckPurpose {
  const known = CHECK_PURPOSES.find((purpose) => purpose === word);
  if (known === undefined) throw new Error(`Unknown purpose ${word} of a check in the database`);
  return known;
}
