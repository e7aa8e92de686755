/** One point of the opening or the closing check. */
export interface CheckPoint {
  readonly id: string;
  /** as it is asked; yes is good */
  readonly ask: string;
  /** what is said when it is not so */
  readonly otherwise: string;
}

/** What has to be so before anybody charges or flies; common practice, no source. */
export const OPENING_POINTS = [
  { id: 'detectors', ask: 'Is the smoke detection on, with nothing put over it?', otherwise: 'the smoke detection is off, or something is put over it' },
  { id: 'way-out', ask: 'Is every way out clear and unlocked?', otherwise: 'a way out is not clear' },
  { id: 'first-aider', ask: 'Is a first-aider here?', otherwise: 'no first-aider is here' },
  { id: 'adult', ask: 'Does a trained adult stay while packs charge?', otherwise: 'no trained adult stays while packs charge' },
  { id: 'outdoor-spot', ask: 'Is a container free at the outdoor spot, for a suspect pack?', otherwise: 'no container is free at the outdoor spot' },
] as const satisfies readonly CheckPoint[];

/** What has to be so before the last one leaves; common practice, no source. */
export const CLOSING_POINTS = [
  { id: 'storage-charge', ask: 'Are all packs at storage charge?', otherwise: 'packs are not at storage charge' },
  { id: 'chargers-off', ask: 'Are the chargers off and unplugged?', otherwise: 'a charger is still on or plugged in' },
  { id: 'put-away', ask: 'Do all packs lie in the store, none in a bag or on the table?', otherwise: 'packs are not in the store' },
  { id: 'counted', ask: 'Were they counted, and none is missing?', otherwise: 'a pack is missing, or nobody counted' },
] as const satisfies readonly CheckPoint[];

/** Nothing is ever preselected, and "not sure" is never good. */
export const POINT_ANSWERS = ['yes', 'no', 'not sure'] as const;
export type PointAnswer = (typeof POINT_ANSWERS)[number];

/** A check as it was answered, point by point. */
export type PointAnswers = Readonly<Record<string, PointAnswer>>;

/** What was not so, in words; empty when every point was answered with yes. A point without an answer counts as not so. */
export function shortfalls(points: readonly CheckPoint[], answers: PointAnswers): readonly string[] {
  return points.filter(({ id }) => answers[id] !== 'yes').map(({ id, otherwise }) => (answers[id] === 'not sure' ? `nobody is sure whether ${otherwise}` : otherwise));
}

/**
 * The same of a check that is kept: held to the points it was asked, so that a later list, with more of them, makes no
 * old check worse. One without any answer was not made.
 */
export function shortfallsKept(points: readonly CheckPoint[], kept: PointAnswers): readonly string[] {
  const asked = points.filter(({ id }) => Object.hasOwn(kept, id));
  return shortfalls(asked.length === 0 ? points : asked, kept);
}
