import type { Area, SeverityClass, SeverityRule } from '@/lib/content/model';
import { numberInput, type Venue, wordInput } from '@/lib/core/answers/venue';
import { burnClass, spreadClass } from '@/lib/core/heat/heat-class';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { smokeClass } from '@/lib/core/smoke/smoke-class';
import { areaAir } from './area-air';
import { packsThatBurn } from './pack-counts';
import { yieldsAt } from './yields';

/** A severity that depends on how fiercely the packs burn: class at a given burn strength z. */
export interface SeverityCase {
  /** every figure the class rests on: equal keys have equal classes at every z, so work is done once */
  readonly key: string;
  readonly classAt: (z: number) => SeverityClass;
}

/**
 * The severity of a branch in this room: a constant, or the smoke or heat rule with this venue's volume,
 * air, distances and number of packs (smokeRule, heatRule, packCountRule).
 */
export function severityCase(venue: Venue, model: PhysicsModel, rule: SeverityRule): SeverityCase {
  if ('fixed' in rule) return { key: `fixed ${rule.fixed}`, classAt: () => rule.fixed };
  const packs = packsThatBurn(venue, rule.packs, rule.area);
  const packEnergyWh = numberInput(venue, 'packWh');
  if (rule.from === 'smoke') return smokeCaseOf(venue, model, rule, packs, packEnergyWh);
  if (rule.what === 'burn') {
    const personDistanceM = numberInput(venue, rule.area === 'storage' ? 'storagePersonDistance' : 'personDistance');
    const key = `burn ${packs} ${packEnergyWh} ${personDistanceM}`;
    return { key, classAt: (z) => burnClass(model, { packs, packEnergyWh, heatYield: yieldsAt(model, z).heatYield, personDistanceM }) };
  }
  const surroundings = surroundingsOf(venue, rule.area);
  const key = `spread ${packs} ${packEnergyWh} ${Object.values(surroundings).join(' ')}`;
  return { key, classAt: (z) => spreadClass(model, { packs, packEnergyWh, heatYield: yieldsAt(model, z).heatYield, ...surroundings }) };
}

function smokeCaseOf(
  venue: Venue,
  model: PhysicsModel,
  rule: Extract<SeverityRule, { readonly from: 'smoke' }>,
  packs: number,
  packEnergyWh: number,
): SeverityCase {
  const air = areaAir(venue, model, rule.area);
  const sharing = rule.sharedBy === undefined ? air.sharing : rule.sharedBy.reduce((people, input) => people + numberInput(venue, input), 0);
  const near = rule.near && isNear(venue, rule.area);
  const fixed = { packs, packEnergyWh, volumeM3: air.volumeM3, airChanges: air.airChanges, evacuationS: air.evacuationS, foundLater: rule.foundLater, near, sharing };
  return {
    key: `smoke ${Object.values(fixed).join(' ')}`,
    classAt: (z) => smokeClass(model, { ...fixed, yields: yieldsAt(model, z) }),
  };
}

/** In the arena somebody carries the pack, so near always applies there; elsewhere it needs people at the table (A42). */
function isNear(venue: Venue, area: Area): boolean {
  return area === 'arena' || numberInput(venue, 'peopleNear') > 0;
}

/** Arena and vehicle have no distances of their own: only what could burn there counts (amendment A34). */
function surroundingsOf(venue: Venue, area: Area) {
  if (area === 'charging') return { fuel: fuelOf(venue, 'fuelLoad'), combustibleDistanceM: numberInput(venue, 'combustibleDistance'), clearHeightM: numberInput(venue, 'clearHeight') };
  if (area === 'storage') return { fuel: fuelOf(venue, 'storageFuelLoad'), combustibleDistanceM: numberInput(venue, 'storageCombustibleDistance'), clearHeightM: numberInput(venue, 'storageClearHeight') };
  return { fuel: fuelOf(venue, 'arenaFuelLoad'), combustibleDistanceM: null, clearHeightM: null };
}

function fuelOf(venue: Venue, input: string): 'light' | 'ordinary' | 'heavy' {
  const word = wordInput(venue, input);
  if (word === 'light' || word === 'ordinary' || word === 'heavy') return word;
  throw new Error(`input ${input} is none of light, ordinary, heavy`);
}
