import { logGamma } from './log-gamma';

const MOST_TERMS = 10_000;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function I(x; a, b): the chance that a beta variable falls below x.
 * Continued fraction (Lentz) on the side where it settles fast.
 * Source: Abramowitz and Stegun 26.5.8 (from memory; checked against published binomial limits).
 * @param x 0 to 1
 * @param a above 0
 * @param b above 0
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const logFront = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return (Math.exp(logFront) * fraction(x, a, b)) / a;
}

function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < MOST_TERMS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d);
    c = nonZero(1 + even / c);
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d);
    c = nonZero(1 + odd / c);
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) return value;
  }
  throw new Error(`the incomplete beta fraction did not settle at x ${x}, a ${a}, b ${b}`);
}

const nonZero = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
