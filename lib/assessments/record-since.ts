/** How far back a school's own record is counted: packs, people and habits of four years ago say little of today's. Our judgement. */
const YEARS_BACK = 3;

/** From when on a record counts now. */
export function recordSince(now: Date): Date {
  const since = new Date(now);
  since.setUTCFullYear(since.getUTCFullYear() - YEARS_BACK);
  return since;
}
