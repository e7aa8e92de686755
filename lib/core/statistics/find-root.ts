const MOST_STEPS = 200;

/**
 * Root of a continuous function that changes sign between two points, to the last digits of x.
 * Chandrupatla's method: inverse quadratic steps where they are safe, halving where they are not.
 * Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997); from memory, checked in tests.
 * @param f finite on [low, high], of opposite signs (or zero) at the ends
 * @throws when the ends have the same sign, or it does not settle: a broken caller
 */
export function findRoot(f: (x: number) => number, low: number, high: number): number {
  let [a, b, c] = [high, low, low];
  let [fa, fb, fc] = [f(high), f(low), Number.NaN];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new Error(`no change of sign between ${low} and ${high}`);
  // a root at 0 has no last digit: it is known when it is this small beside the stretch searched
  const resolution = 1e-18 * Math.abs(high - low);
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (Math.sign(fx) === Math.sign(fa)) [c, fc] = [a, fa];
    else [c, b, fc, fb] = [b, a, fb, fa];
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const tolerance = (2 * Number.EPSILON * Math.abs(best) + resolution) / Math.abs(b - a);
    if (tolerance > 0.5 || fa === 0 || fb === 0) return best;
    share = Math.min(1 - tolerance, Math.max(tolerance, nextShare(a, b, c, fa, fb, fc)));
  }
  throw new Error(`the root between ${low} and ${high} was not found`);
}

/** Where between a and b to look next, 0 to 1. */
function nextShare(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
}
