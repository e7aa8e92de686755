import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import { CLOSING_POINTS, type PointAnswers, shortfalls } from './check-points';
import { type Decided, refusedFor } from './decided';
import { pointFields } from './open-session';
import { type Session, stateOfSession, totalsOf } from './session';

/** The closing check as its form sends it. */
export const CloseSessionSchema = z.object({
  sessionId: line('The form has lost its session'),
  revision: z.coerce.number().int(),
  ...pointFields(CLOSING_POINTS),
  peoplePresent: optionalTypedNumber({ least: 1, most: 500, unit: 'people', whole: true }),
  note: optionalLine(400),
});
export type CloseSessionInput = z.output<typeof CloseSessionSchema>;

export interface Closing {
  readonly endedAt: Date;
  readonly closing: PointAnswers;
  readonly peoplePresent: number | null;
  readonly note: string | null;
}

/** Decides about a closing check. What is not so is written down with what was done about it. */
export function closeSession(session: Session, input: CloseSessionInput, at: Date): Decided<Closing> {
  if (stateOfSession(session) !== 'open') return refusedFor(null, 'This session is not open');
  if (session.revision !== input.revision) return refusedFor(null, 'Somebody logged something since you opened this page. Look at the counts, then close it');
  const closing = Object.fromEntries(CLOSING_POINTS.map((point) => [point.id, input[point.id]]));
  if (shortfalls(CLOSING_POINTS, closing).length > 0 && input.note === null) return refusedFor('note', 'Write what is not so and who sees to it');
  const { packs, charges } = totalsOf(session);
  const change = { endedAt: at, closing, peoplePresent: input.peoplePresent ?? session.peoplePresent, note: joined(session.note, input.note) };
  return { ok: true, change, events: [{ kind: 'session.closed', subjectId: session.id, data: { packs, charges } }] };
}

function joined(before: string | null, now: string | null): string | null {
  const parts = [before, now].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join('. ');
}
