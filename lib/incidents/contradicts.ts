import type { Kind } from './choices';
import type { Facts } from './facts';

/**
 * What a signed assessment says does not happen here while its controls hold. A hard hit, a drone that hit somebody, or
 * something that nearly happened is foreseen in it, as long as nobody was harmed.
 */
const UNFORESEEN: readonly Kind[] = ['swelling', 'heat', 'smoke-or-venting', 'fire', 'short-circuit', 'smell-or-leak', 'electric-shock', 'injury'];

/** Whether a signed assessment of the place has to be looked at again. Not to be sure counts as harm. */
export function contradictsAssessment({ kinds, hurt, breathed }: Pick<Facts, 'kinds' | 'hurt' | 'breathed'>): boolean {
  return hurt !== 'no' || breathed !== 'no' || kinds.some((kind) => UNFORESEEN.includes(kind));
}
