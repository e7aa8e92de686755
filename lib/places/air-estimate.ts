import type { ConstantId, Content } from '@/lib/content/model';
import { type PhysicsModel, physicsModel } from '@/lib/core/physics-model';
import { type AirSupply, chargingAirChanges } from '@/lib/core/smoke/air-changes';
import type { AreaDetails, AirMode } from './place';

/** Air changes an hour of an area: the middle, and what it may lie between; all one where a figure was given. */
export interface AirEstimate {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  /** what it rests on, in words */
  readonly from: string;
}

type AreaAir = Pick<AreaDetails, 'outdoors' | 'lengthM' | 'widthM' | 'heightM' | 'airMode' | 'airChangesPerHour' | 'airFlowM3PerH' | 'openingWidthM' | 'openingHeightM'>;

/** Class of the content for those who know the windows and not the figure. */
const CLASS_OF: Readonly<Record<'closed' | 'bit-open' | 'wide-open' | 'fan', string>> = { closed: 'shut', 'bit-open': 'bit-open', 'wide-open': 'wide-open', fan: 'fan' };

/** Inside volume of a room, m³; null while a side is not known. */
export function volumeM3({ lengthM, widthM, heightM }: Pick<AreaDetails, 'lengthM' | 'widthM' | 'heightM'>): number | null {
  return lengthM === null || widthM === null || heightM === null ? null : lengthM * widthM * heightM;
}

/**
 * Air changes of a room by what is known of it: a figure, a fan's flow over the volume, the gap to outdoors by the model
 * of lib/core/smoke/air-changes, or the class of the content. Outdoors and while nothing is known there is none.
 */
export function airEstimate(content: Content, area: AreaAir): AirEstimate | null {
  if (area.outdoors || area.airMode === null) return null;
  switch (area.airMode) {
    case 'measured': return area.airChangesPerHour === null ? null : same(area.airChangesPerHour, 'the caretaker’s figure');
    case 'openings': return throughGap(content, area);
    case 'fan': return byFan(content, area) ?? byClass(content, 'fan');
    case 'closed':
    case 'bit-open':
    case 'wide-open': return byClass(content, area.airMode);
  }
}

const same = (value: number, from: string): AirEstimate => ({ low: value, mid: value, high: value, from });

function byClass(content: Content, mode: Exclude<AirMode, 'openings' | 'measured'>): AirEstimate | null {
  const found = content.airClasses?.find(({ id }) => id === CLASS_OF[mode]);
  return found === undefined ? null : { low: found.low, mid: found.mid, high: found.high, from: `${found.title}, ${found.kind}` };
}

function byFan(content: Content, area: AreaAir): AirEstimate | null {
  const volume = volumeM3(area);
  if (volume === null || area.airFlowM3PerH === null) return null;
  const changes = chargingAirChanges(physicsModel(content), { ...NO_AIR, mode: 'mechanical', volumeM3: volume, flowM3PerHour: area.airFlowM3PerH });
  return same(changes, 'the flow of the fan over the volume of the room');
}

function throughGap(content: Content, area: AreaAir): AirEstimate | null {
  const volume = volumeM3(area);
  if (volume === null || area.openingWidthM === null || area.openingHeightM === null) return null;
  const model = physicsModel(content);
  const supply: AirSupply = { ...NO_AIR, mode: 'openings', volumeM3: volume, openingM2: area.openingWidthM * area.openingHeightM, openingHeightM: area.openingHeightM };
  const on = (weather: Partial<PhysicsModel>): number => chargingAirChanges({ ...model, ...weather }, supply);
  const range = (id: ConstantId): { readonly low: number; readonly high: number } => {
    const found = content.constants.find((constant) => constant.id === id);
    if (found === undefined) throw new Error(`the content has no ${id}`);
    return found;
  };
  const [wind, warmth, closed] = [range('windSpeed'), range('tempDiff'), range('closedAch')];
  return {
    low: on({ windSpeed: wind.low, tempDiff: warmth.low, closedAch: closed.low }),
    mid: on({}),
    high: on({ windSpeed: wind.high, tempDiff: warmth.high, closedAch: closed.high }),
    from: 'the gap to outdoors on a calm, mild day, by a published formula',
  };
}

const NO_AIR: Omit<AirSupply, 'mode' | 'volumeM3'> = { measuredAch: 0, flowM3PerHour: 0, openingM2: 0, openingHeightM: 0 };
