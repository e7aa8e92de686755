import { logGamma, STIRLING_FROM, stirlingRemainder } from './log-gamma';

const MOST_TERMS = 100_000;
const TINY = 1e-300;

/** Lower and upper part of the regularised incomplete gamma function; they add up to 1. */
export interface GammaParts { readonly lower: number; readonly upper: number }

/**
 * Regularised incomplete gamma functions P(a, x) and Q(a, x) = 1 − P: the distribution function of a gamma
 * variable of shape a and rate 1. Series for small x, continued fraction (Lentz) for large x, so that
 * the smaller part keeps its digits.
 * Source: Abramowitz and Stegun 6.5.29 and 6.5.31 (from memory; checked against second libraries).
 * @param a shape, above 0
 * @param x 0 or more
 */
export function incompleteGamma(a: number, x: number): GammaParts {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x < a + 1) {
    const lower = Math.min(1, seriesSum(a, x) * density(a, x));
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, fraction(a, x) * density(a, x));
  return { lower: 1 - upper, upper };
}

/** x^a · e^(−x) / Γ(a + 1) · a, written so that large shapes lose no digits. */
function density(a: number, x: number): number {
  if (a < STIRLING_FROM) return Math.exp(a * Math.log(x) - x - logGamma(a));
  const excess = (x - a) / a;
  return Math.exp(-a * (excess - Math.log1p(excess)) - stirlingRemainder(a)) * Math.sqrt(a / (2 * Math.PI));
}

function seriesSum(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_TERMS; n += 1) {
    term *= x / (a + n);
    sum += term;
    if (term < sum * 1e-17) return sum;
  }
  throw new Error(`the incomplete gamma series did not settle at a ${a}, x ${x}`);
}

function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n += 1) {
    const term = -n * (n - a);
    b += 2;
    d = 1 / nonZero(term * d + b);
    c = nonZero(b + term / c);
    const step = c * d;
    value *= step;
    if (Math.abs(step - 1) < 1e-16) return value;
  }
  throw new Error(`the incomplete gamma fraction did not settle at a ${a}, x ${x}`);
}

const nonZero = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
