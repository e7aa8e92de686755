import { z } from 'zod';
import { line, listOf, oneOf } from '@/lib/forms/fields';
import { typedNumber } from '@/lib/questionnaire/number-field';
import { type Decided, refusedFor } from './decided';
import { type LoggedPack, type Session, stateOfSession } from './session';

const SESSION = { sessionId: line('The form has lost its session'), revision: z.coerce.number().int() };

/** Packs that were charged, or that crashed, since the last time: one press adds one to each. */
export const LogPacksSchema = z.object({ ...SESSION, packs: listOf(z.string().min(1).max(60)), what: oneOf(['charge', 'crash'], 'Press one of the two buttons') });
export type LogPacksInput = z.output<typeof LogPacksSchema>;

/** What one pack did, said anew. */
export const CorrectLogSchema = z.object({
  ...SESSION,
  packId: line('Choose the pack'),
  charges: typedNumber('Enter how often it was charged; 0 when not at all', { least: 0, most: 20, unit: 'charges', whole: true }),
  crashes: typedNumber('Enter how often it crashed; 0 when not at all', { least: 0, most: 20, unit: 'crashes', whole: true }),
  reason: line('Write what was wrong before', 200),
});
export type CorrectLogInput = z.output<typeof CorrectLogSchema>;

/** A pack of the register as the log needs it. */
export interface PackToLog {
  readonly id: string;
  readonly label: string;
  /** why it must not be charged, in words; null when it may */
  readonly notToCharge: string | null;
}

export type Counts = Pick<LoggedPack, 'packId' | 'charges' | 'crashes'>;

const CHANGED = 'Somebody logged something since you opened this page. Look at the counts, then press again';

/**
 * Decides about charges or crashes, one for each pack named. The log never offers a pack that must not be charged; one
 * that was charged all the same is an incident, and is recorded as that.
 */
export function logPacks(session: Session, { packs: ids, what, revision }: LogPacksInput, register: readonly PackToLog[]): Decided<readonly Counts[]> {
  const closed = notOpen(session, revision);
  if (closed !== null) return refusedFor(null, closed);
  if (ids.length === 0) return refusedFor('packs', 'Choose the packs first');
  const named = register.filter(({ id }) => ids.includes(id));
  if (named.length < new Set(ids).size) return refusedFor('packs', 'One of these packs is no longer in the register');
  const barred = what === 'charge' ? named.filter(({ notToCharge }) => notToCharge !== null) : [];
  if (barred.length > 0) return refusedFor('packs', `Not to be charged: ${barred.map(({ label, notToCharge }) => `${label}, ${notToCharge ?? ''}`).join('; ')}. If it was charged all the same, record it as an incident`);
  const change = named.map(({ id }) => counted(session.packs.find(({ packId }) => packId === id), id, what));
  const labels = named.map(({ label }) => label);
  return { ok: true, change, events: [what === 'charge' ? { kind: 'session.charges-logged', subjectId: session.id, data: { packs: named.length, charges: named.length } } : { kind: 'session.crashes-logged', subjectId: session.id, data: { labels } }] };
}

/** A charge says nothing of crashes: they stay unknown until somebody logs one. */
function counted(before: LoggedPack | undefined, packId: string, what: 'charge' | 'crash'): Counts {
  const { charges, crashes } = before ?? { charges: 0, crashes: null };
  return what === 'charge' ? { packId, charges: charges + 1, crashes } : { packId, charges, crashes: (crashes ?? 0) + 1 };
}

/** Decides about a count said anew, also after the session; what stood there before stays in the log of changes. */
export function correctLog(session: Session, { packId, charges, crashes, reason, revision }: CorrectLogInput, register: readonly PackToLog[]): Decided<Counts> {
  if (stateOfSession(session) === 'stopped') return refusedFor(null, 'This session did not begin, so nothing was charged in it');
  if (session.revision !== revision) return refusedFor(null, CHANGED);
  const pack = register.find(({ id }) => id === packId);
  if (pack === undefined) return refusedFor('packId', 'Choose the pack');
  const before = session.packs.find((one) => one.packId === packId) ?? { charges: 0, crashes: null };
  const data = { label: pack.label, chargesFrom: before.charges, chargesTo: charges, crashesFrom: before.crashes, crashesTo: crashes, reason };
  return { ok: true, change: { packId, charges, crashes }, events: [{ kind: 'session.corrected', subjectId: session.id, data }] };
}

function notOpen(session: Session, revision: number): string | null {
  const state = stateOfSession(session);
  if (state === 'stopped') return 'This session did not begin: nobody charges or flies. Make the opening check again when it is put right';
  if (state === 'closed') return 'This session is closed. Put a count right below';
  return session.revision === revision ? null : CHANGED;
}
