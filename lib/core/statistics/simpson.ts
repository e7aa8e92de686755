/**
 * Integral of a function over [from, to] by the composite Simpson rule.
 * @param intervals even, 2 or more
 * @throws on an odd or missing number of intervals
 */
export function simpson(f: (x: number) => number, from: number, to: number, intervals: number): number {
  if (!Number.isInteger(intervals) || intervals < 2 || intervals % 2 !== 0) throw new Error(`an even number of intervals is wanted, got ${intervals}`);
  const step = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let index = 1; index < intervals; index += 1) sum += (index % 2 === 1 ? 4 : 2) * f(from + index * step);
  return (sum * step) / 3;
}
