import type { AreaUse } from './place';

/** Parts of an area's form. Which are asked depends on its use: of an outdoor spot nobody asks for air changes. */
export type AreaPart = 'size' | 'air' | 'surface' | 'distances' | 'fuel' | 'detectors' | 'people' | 'leaving';

const PARTS: Readonly<Record<AreaUse, readonly AreaPart[]>> = {
  charging: ['size', 'air', 'surface', 'distances', 'fuel', 'detectors', 'people', 'leaving'],
  storage: ['size', 'air', 'distances', 'fuel', 'detectors', 'people', 'leaving'],
  arena: ['size', 'air', 'fuel', 'detectors', 'people', 'leaving'],
  isolation: ['distances'],
  disposal: [],
};

/** What is asked of an area. Outdoors there is no room: no size, no air, no detector. */
export function partsOf(use: AreaUse, outdoors: boolean): readonly AreaPart[] {
  const indoorsOnly: readonly AreaPart[] = ['size', 'air', 'detectors'];
  return PARTS[use].filter((part) => !outdoors || !indoorsOnly.includes(part));
}

/** Number fields with their bounds in SI: those of the content's inputs, as wide as the widest use. */
export const AREA_NUMBERS = {
  lengthM: { least: 0.5, most: 200, quantity: 'length' },
  widthM: { least: 0.5, most: 200, quantity: 'length' },
  heightM: { least: 0.5, most: 30, quantity: 'length' },
  openingWidthM: { least: 0.01, most: 8, quantity: 'length' },
  openingHeightM: { least: 0.1, most: 6, quantity: 'length' },
  personDistanceM: { least: 0, most: 20, quantity: 'length' },
  combustibleDistanceM: { least: 0, most: 20, quantity: 'length' },
  clearHeightM: { least: 0, most: 20, quantity: 'length' },
  airChangesPerHour: { least: 0.05, most: 60, quantity: 'air changes' },
  airFlowM3PerH: { least: 1, most: 100_000, quantity: 'flow' },
  exits: { least: 0, most: 20, quantity: 'count' },
  peoplePresent: { least: 0, most: 5000, quantity: 'count' },
} as const;
export type AreaNumber = keyof typeof AREA_NUMBERS;
