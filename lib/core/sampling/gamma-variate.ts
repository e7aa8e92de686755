import { normalVariate } from './normal-variate';
import type { RandomStream } from './random-stream';

/**
 * A gamma variate with rate 1: Marsaglia and Tsang, "A simple method for generating gamma variables",
 * ACM TOMS 26(3), 2000, with the power of a uniform for shapes below 1 (their section 6).
 * @param shape above 0
 * @returns above or equal to 0, finite
 */
export function gammaVariate(stream: RandomStream, shape: number): number {
  if (shape >= 1) return aboveOne(stream, shape);
  return aboveOne(stream, shape + 1) * Math.exp(Math.log(stream.nextOpen()) / shape);
}

function aboveOne(stream: RandomStream, shape: number): number {
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const z = normalVariate(stream);
    const root = 1 + c * z;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = stream.nextOpen();
    const squared = z * z;
    if (u < 1 - 0.0331 * squared * squared) return d * v;
    if (Math.log(u) < 0.5 * squared + d * (1 - v + Math.log(v))) return d * v;
  }
}
