import packs from '@/lib/content/edition-2/packs.json';
import type { PackCheck, PackLimits } from '@/lib/content/model';
import { packLimitsSchema } from '@/lib/content/schema/packs';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';

/** The pack limits of the second edition, and its check, which the first has not. */
export const secondLimits: PackLimits = packLimitsSchema.parse(packs.packLimits);
export const secondCheck: PackCheck = checkOf(secondLimits);

/** A sound 4.20 V pack with everything measured. */
export const soundPack: PackMeasures = {
  venting: false, growing: false, wet: false, swollen: false, bareFoil: false, dented: false, cellMoved: false, discoloured: false, tornWrap: false, damagedLead: false,
  hissing: false, smell: false,
  hoursSinceUse: 12, temperatureRise: 1, feltWarm: false, warming: false, packTemperature: 21, ambientTemperature: 20,
  cellType: 'full-4-20', marked: true, secondHand: false, firstChargeWentWell: false, hoursSinceImpact: 48, hoursSinceCharge: 12, hoursFull: 0, ageMonths: 8, cycles: 60,
  silentCells: 0, cellMin: 3.79, cellMax: 3.81, cellSpread: 0.02,
  resistanceRatio: 1.1, capacityShare: 0.95,
};

function checkOf({ check }: PackLimits): PackCheck {
  if (check === undefined) throw new Error('the second edition has no pack check');
  return check;
}
