import { z } from 'zod';
import { line, oneOf, optionalLine } from '@/lib/forms/fields';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import { DAY_MS } from '@/lib/units/time';
import { OPENING_POINTS, POINT_ANSWERS, type PointAnswers, shortfalls } from './check-points';
import { type Decided, refusedFor } from './decided';

/** The answers of a list of points, each under its own name. */
export function pointFields<const Points extends readonly { readonly id: string }[]>(points: Points) {
  return Object.fromEntries(points.map(({ id }) => [id, oneOf(POINT_ANSWERS, 'Choose an answer')])) as { readonly [Id in Points[number]['id']]: ReturnType<typeof oneOf<typeof POINT_ANSWERS>> };
}

/** The opening check as its form sends it. */
export const OpenSessionSchema = z.object({
  siteId: line('Choose where it is'),
  /** local date and time; left empty it is now */
  startedAt: optionalLine(20),
  ...pointFields(OPENING_POINTS),
  peoplePresent: optionalTypedNumber({ least: 1, most: 500, unit: 'people', whole: true }),
  note: optionalLine(400),
});
export type OpenSessionInput = z.output<typeof OpenSessionSchema>;

export interface Opening {
  readonly startedAt: Date;
  /** the same moment when it does not begin */
  readonly endedAt: Date | null;
  readonly opening: PointAnswers;
}

interface OpeningCommand {
  readonly id: string;
  readonly input: OpenSessionInput;
  readonly startedAt: Date;
  readonly now: Date;
  /** a session that is open at this place already */
  readonly openThere: boolean;
}

/** Later than that nobody remembers what the doors looked like; our judgement. */
const LATEST_DAYS = 14;

/**
 * Decides about an opening check. One that is not good in every point is kept as well, as a session that does not begin:
 * to have looked and found something is no fault.
 */
export function openSession({ id, input, startedAt, now, openThere }: OpeningCommand): Decided<Opening> {
  if (startedAt.getTime() > now.getTime()) return refusedFor('startedAt', 'This time has not come yet');
  if (now.getTime() - startedAt.getTime() > LATEST_DAYS * DAY_MS) return refusedFor('startedAt', `Write a session down within ${LATEST_DAYS} days`);
  if (openThere) return refusedFor('siteId', 'A session is open there. Close it first');
  const opening = Object.fromEntries(OPENING_POINTS.map((point) => [point.id, input[point.id]]));
  const missing = shortfalls(OPENING_POINTS, opening);
  const { siteId } = input;
  if (missing.length > 0) return { ok: true, change: { startedAt, endedAt: startedAt, opening }, events: [{ kind: 'session.stopped', subjectId: id, data: { siteId, missing: [...missing] } }] };
  return { ok: true, change: { startedAt, endedAt: null, opening }, events: [{ kind: 'session.opened', subjectId: id, data: { siteId } }] };
}
