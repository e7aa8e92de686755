/**
 * Share by which energies of the same packs may differ without meaning anything: labels print them rounded, and sums of
 * them are rounded again. Less than a pack; the number of packs is held by itself. Our judgement.
 */
const ROUNDING = 0.01;

/** Whether there is more energy than was covered, both in Wh, at least 0. */
export function isMoreEnergy(nowWh: number, coveredWh: number): boolean {
  return nowWh > coveredWh * (1 + ROUNDING);
}
