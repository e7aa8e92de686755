import type { ConstantId, PhysicsId } from '@/lib/content/model';

/** What the physical numbers of the content are, for somebody who has not read the calculation. */
const WORDS: Readonly<Record<PhysicsId | ConstantId, string>> = {
  hfYield: 'hydrogen fluoride given off, for each watt-hour',
  gasVolume: 'gas given off, for each watt-hour',
  coFraction: 'carbon monoxide in that gas',
  lflVentGas: 'share of that gas in air from which it can burn',
  peakHeatRelease: 'heat at the fiercest, for each watt-hour',
  radiantFraction: 'share of the heat that is radiated',
  releaseDuration: 'time a pack gives off gas',
  packToPackTime: 'time until the next pack that touches it starts',
  burningTogether: 'packs that burn at the same time',
  nearTime: 'time until people at the table have stepped away',
  flameBase: 'width of the fire at its foot',
  molarVolume: 'volume of a mole of gas',
  molarMassHF: 'mass of a mole of hydrogen fluoride',
  molarMassCO: 'mass of a mole of carbon monoxide',
  nominalCellVoltage: 'voltage of a cell, for its energy',
  coDoseDenominator: 'carbon monoxide breathed that makes people incapable',
  woodIgnition: 'radiated heat at which wood counts as set alight',
  painFlux: 'radiated heat at which bare skin hurts',
  noPainFlux: 'radiated heat that does not hurt',
  burnFlux: 'radiated heat at which skin burns within seconds',
  reachMin: 'reach of jets and sparks, at least',
  nearRefVolume: 'volume that counts as evenly mixed at once',
  nearFactorMax: 'how much denser smoke is at the table, at most',
  outdoorVolume: 'air that moves past a canopy outdoors, as a volume',
  outdoorAch: 'how often an hour that air is renewed',
  windSpeed: 'wind on a calm day, for openings',
  tempDiff: 'warmer inside than outside, for openings',
  closedAch: 'how often an hour the air renews itself with everything shut',
  continuousFactor: 'share of a circuit that may be loaded for hours',
  seasonDays: 'days in a season',
  openSpread: 'packs that touch and burn before the first is out, at most',
};

/** A physical number of the content in words, without its unit; undefined when it is none. */
export function quantityWords(id: string): string | undefined {
  return isQuantity(id) ? WORDS[id] : undefined;
}

const isQuantity = (id: string): id is PhysicsId | ConstantId => Object.hasOwn(WORDS, id);
