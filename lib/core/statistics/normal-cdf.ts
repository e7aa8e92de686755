import { polynomial } from './polynomial';

// Rational approximations of W. J. Cody, "Rational Chebyshev approximations for the error function",
// Mathematics of Computation 23 (1969), in the form for the normal distribution (ACM Algorithm 715).
// The coefficients are from memory; the tests hold them against second libraries and known values.
const CENTRE_TOP = [0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249];
const CENTRE_BOTTOM = [1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956];
const FLANK_TOP = [1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218];
const FLANK_BOTTOM = [1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091, 34900.952721145977266, 38912.003286093271411, 19685.429676859990727];
const TAIL_TOP = [0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807, 0.001421619193227893466, 2.9112874951168792e-5];
const TAIL_BOTTOM = [1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244, 7.29751555083966205e-5];

const CENTRE_UNTIL = 0.67448975;
const FLANK_UNTIL = Math.sqrt(32);
const INVERSE_ROOT_TWO_PI = 0.39894228040143267794;

/**
 * Standard normal distribution function Φ(z), right to about 1e-15 of its value in both tails.
 * @param z any number; −∞ gives 0 and +∞ gives 1
 */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (size <= CENTRE_UNTIL) {
    const square = z * z;
    return 0.5 + (z * polynomial(CENTRE_TOP, square)) / polynomial(CENTRE_BOTTOM, square);
  }
  const tail = upperTail(size);
  return z > 0 ? 1 - tail : tail;
}

/** 1 − Φ(z) for z above the centre, without the loss of digits of the subtraction. */
function upperTail(z: number): number {
  if (z > 40) return 0;
  if (z <= FLANK_UNTIL) return (bell(z) * polynomial(FLANK_TOP, z)) / polynomial(FLANK_BOTTOM, z);
  const inverse = 1 / (z * z);
  const correction = (inverse * polynomial(TAIL_TOP, inverse)) / polynomial(TAIL_BOTTOM, inverse);
  return (bell(z) * (INVERSE_ROOT_TWO_PI - correction)) / z;
}

/** e^(−z²/2), with z split at sixteenths so that the square of the large part is exact. */
function bell(z: number): number {
  const coarse = Math.trunc(z * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(z - coarse) * (z + coarse)) / 2);
}
