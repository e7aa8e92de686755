import { randomUUID } from 'node:crypto';
import type { CheckPurpose, FoundInCheck } from '@/lib/packs/checks/check-record';
import { decideCheck, type CheckDecision } from '@/lib/packs/checks/decide-check';
import type { Pack } from '@/lib/packs/pack';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { decideOnPack, type Writing, writeState, type Written } from './write-pack';

/** A check as it is handed over to be kept. */
export interface NewCheck {
  readonly packId: string;
  readonly purpose: CheckPurpose;
  readonly contentVersion: string;
  readonly note: string | null;
  readonly sessionId?: string;
  readonly found: FoundInCheck;
}

/** Keeps a check, and gives the pack at once the state that its verdict asks for; both or neither. */
export async function recordCheck(db: Db, by: Member, at: Date, check: NewCheck): Promise<(Written & { readonly ok: false }) | { readonly ok: true; readonly checkId: string }> {
  const checkId = randomUUID();
  const written = await decideOnPack(db, by, at, check.packId, ({ pack }) => decideCheck(pack, checkId, check), (writing, pack, decision) => writeCheck(writing, pack, checkId, check, decision));
  return written.ok ? { ok: true, checkId } : written;
}

async function writeCheck(writing: Writing, pack: Pack, id: string, check: NewCheck, { state }: CheckDecision): Promise<void> {
  const { tx, scope, by, at } = writing;
  const { measures, cellVolts, resistance, result } = check.found;
  await tx.packCheck.create({
    data: {
      ...scope, id, packId: pack.id, sessionId: check.sessionId ?? null, purpose: check.purpose, contentVersion: check.contentVersion, verdict: result.verdict, note: check.note,
      measuresJson: JSON.stringify(measures), cellVoltsJson: JSON.stringify(cellVolts), resistanceJson: JSON.stringify(resistance), resultJson: JSON.stringify(result),
      byId: by.personId, byName: by.name, at,
    },
  });
  if (state !== null) await writeState(writing, pack, { ...state, checkId: id });
}
