import { polynomial } from './polynomial';

/** B₂ₖ / (2k(2k − 1)) for k = 8 down to 1, the Bernoulli terms of Stirling's series. */
const STIRLING = [-3617 / 122400, 1 / 156, -691 / 360360, 1 / 1188, -1 / 1680, 1 / 1260, -1 / 360, 1 / 12];
const HALF_LOG_TWO_PI = 0.91893853320467274178;
/** From here on Stirling's series is right to the last digit. */
export const STIRLING_FROM = 10;

/** What Stirling's formula leaves out: ln Γ(a) − [(a − ½) ln a − a + ½ ln 2π], for a ≥ 10. */
export function stirlingRemainder(a: number): number {
  return polynomial(STIRLING, 1 / (a * a)) / a;
}

/**
 * Natural logarithm of the gamma function, by Stirling's series after lifting small arguments with
 * Γ(a + 1) = a·Γ(a).
 * @param a above 0
 */
export function logGamma(a: number): number {
  if (!(a > 0)) throw new Error(`the gamma function is used above 0 only, got ${a}`);
  let lifted = a;
  let product = 1;
  while (lifted < STIRLING_FROM) { product *= lifted; lifted += 1; }
  return (lifted - 0.5) * Math.log(lifted) - lifted + HALF_LOG_TWO_PI + stirlingRemainder(lifted) - Math.log(product);
}
