import { z } from 'zod';
import { OPENING_POINTS, POINT_ANSWERS, type PointAnswers, shortfallsKept } from './check-points';

/** What one pack did in one session. */
export interface LoggedPack {
  readonly packId: string;
  readonly label: string;
  readonly charges: number;
  /** null: nobody has said */
  readonly crashes: number | null;
}

/** One training or match, as the log holds it. */
export interface Session {
  readonly id: string;
  readonly siteId: string;
  readonly siteName: string;
  readonly startedAt: Date;
  readonly endedAt: Date | null;
  /** in the room while packs charge; null when not counted */
  readonly peoplePresent: number | null;
  readonly opening: PointAnswers;
  readonly closing: PointAnswers;
  readonly note: string | null;
  readonly byId: string;
  readonly byName: string;
  readonly revision: number;
  /** by label */
  readonly packs: readonly LoggedPack[];
}

/** The answers of a check as they are kept; a point of an older list stays. */
export const PointAnswersSchema = z.record(z.string(), z.enum(POINT_ANSWERS));

/** `stopped`: the opening check was kept, and nobody charged or flew. */
export type SessionState = 'open' | 'closed' | 'stopped';

/** What stood against beginning. */
export function openingShortfalls({ opening }: Pick<Session, 'opening'>): readonly string[] {
  return shortfallsKept(OPENING_POINTS, opening);
}

export function stateOfSession(session: Pick<Session, 'opening' | 'endedAt'>): SessionState {
  if (openingShortfalls(session).length > 0) return 'stopped';
  return session.endedAt === null ? 'open' : 'closed';
}

export const SESSION_STATE_WORDS: Readonly<Record<SessionState, string>> = { open: 'open', closed: 'closed', stopped: 'not begun' };

/** Charges and crashes of a session; crashes null when nobody has logged any. */
export function totalsOf({ packs }: Pick<Session, 'packs'>): { readonly packs: number; readonly charges: number; readonly crashes: number | null } {
  const known = packs.flatMap(({ crashes }) => (crashes === null ? [] : [crashes]));
  return { packs: packs.length, charges: sum(packs.map(({ charges }) => charges)), crashes: known.length === 0 ? null : sum(known) };
}

/** "20 charges", "1 crash". */
export function countWords(count: number, one: 'charge' | 'crash' | 'pack'): string {
  return `${count} ${count === 1 ? one : one === 'crash' ? 'crashes' : `${one}s`}`;
}

export const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
