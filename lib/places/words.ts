import type { AirMode, AreaUse, Detectors, FuelLoad, SiteKind, Surface } from './place';

export const SITE_KIND_WORDS: Readonly<Record<SiteKind, string>> = { own: 'Our own school', away: 'Somewhere else' };

export const AREA_USE_WORDS: Readonly<Record<AreaUse, string>> = {
  charging: 'Charging',
  storage: 'Storage',
  arena: 'Arena',
  isolation: 'Outdoor spot for suspect packs',
  disposal: 'Collection of old packs',
};

export const AREA_USE_HINTS: Readonly<Record<AreaUse, string>> = {
  charging: 'The room where packs are on charge',
  storage: 'Where packs stay between sessions',
  arena: 'The hall with the net',
  isolation: 'Outdoors, where a suspect pack waits, apart from everything',
  disposal: 'Where old packs wait until somebody collects them',
};

export const AIR_WORDS: Readonly<Record<AirMode, string>> = {
  closed: 'Everything is shut',
  'bit-open': 'Windows straight to outdoors are a bit open',
  'wide-open': 'Windows or doors straight to outdoors stay wide open (not doors to a corridor)',
  openings: 'Open straight to outdoors, and the gap is measured',
  fan: 'A fan or extract runs',
  measured: 'The caretaker has a figure',
};

export const SURFACE_WORDS: Readonly<Record<Surface, string>> = {
  unburnable: 'Neither burns nor conducts, 30 cm (1 ft) wider than the packs',
  tile: 'A tile or tray on something that burns',
  metal: 'A bare metal bench or shelf',
  burnable: 'Wood, plastic or carpet',
  'carpet-tiles': 'A concrete floor with carpet tiles',
};

export const DETECTOR_WORDS: Readonly<Record<Detectors, string>> = {
  tested: 'A smoke alarm, tested and heard',
  'not-tested': 'A smoke alarm, not tested or not heard by all',
  'off-at-times': 'A smoke alarm that is covered or off at times',
  none: 'None',
};

export const FUEL_WORDS: Readonly<Record<FuelLoad, string>> = {
  light: 'Little: a bare room or hall',
  ordinary: 'Furniture, books, displays, seats',
  heavy: 'Packed with mats, paper, costumes or wood',
};
