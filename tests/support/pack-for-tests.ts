import { packVerdict } from '@/lib/core/battery/pack-verdict';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import type { CheckRecord } from '@/lib/packs/checks/check-record';
import type { PackHistory } from '@/lib/packs/pack-history';
import type { Pack, StateChange } from '@/lib/packs/pack';
import { HOUR_MS } from '@/lib/units/time';
import { secondLimits, soundPack } from './second-pack-limits';

export const MONDAY = new Date('2026-11-23T09:00:00.000Z');
export const later = (hours: number): Date => new Date(MONDAY.getTime() + hours * HOUR_MS);

/** A pack of our own invention; whatever matters to a test is given. */
export function packForTest(given: Partial<Pack> = {}): Pack {
  return {
    id: 'pack-1', label: 'W-11', series: 4, parallel: 1, capacityMah: 850, cRating: 75, printedWh: null, cellType: 'full-4-20', connector: 'XT30', maker: 'Tern', seller: null, batch: 'B-25-09',
    secondHand: false, boughtOn: '2026-01-10', firstUsedOn: '2026-01-12', chargesBefore: 0, areaId: null, place: 'cupboard A', notes: null,
    siteId: null, state: 'in-use', stateReason: null, stateSince: MONDAY, createdAt: MONDAY, revision: 1, ...given,
  };
}

/** A check of a sound pack, with what is given measured otherwise. */
export function checkForTest(at: Date, given: PackMeasures = {}): CheckRecord {
  const measures = { ...soundPack, ...given };
  return { id: `check-${at.toISOString()}`, purpose: 'plain', measures, cellVolts: [], resistance: [], contentVersion: '2.0.0', result: packVerdict(secondLimits, measures), note: null, byName: 'S. T.', at };
}

export function changeForTest(at: Date, given: Partial<StateChange> = {}): StateChange {
  return { id: `change-${at.toISOString()}`, from: 'in-use', to: 'isolated', reason: 'lay beside W-07', cause: 'nearby', placeNow: null, placeNote: null, inSand: null, checkId: null, incidentId: null, byName: 'S. T.', at, ...given };
}

export function historyForTest(given: Partial<PackHistory> = {}): PackHistory {
  return { pack: packForTest(), checks: [], changes: [], charges: 60, ...given };
}
