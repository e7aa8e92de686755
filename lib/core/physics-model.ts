import type { AeglTables, ConstantId, Content, PhysicsId } from '@/lib/content/model';
import { type AeglCurve, aeglCurve } from '@/lib/core/smoke/aegl-curve';

/** Low, middle and high of a quantity of the fire, in the unit the content states. */
export interface Levels { readonly low: number; readonly mid: number; readonly high: number }
export type LevelName = keyof Levels;

/** Airborne exposure guideline levels as curves over time, by gas and level. CO has no level 1. */
export interface AeglCurves {
  readonly HF: Readonly<Record<'1' | '2' | '3', AeglCurve>>;
  readonly CO: Readonly<Record<'2' | '3', AeglCurve>>;
}

/** Constants of the first edition that no model reads. */
const UNUSED = ['noPainFlux', 'seasonDays'] as const satisfies readonly ConstantId[];
type UsedConstant = Exclude<ConstantId, (typeof UNUSED)[number]>;

/** Whether some figure of the result rests on this constant. */
export function isUsed(constant: { readonly id: ConstantId }): boolean {
  return !UNUSED.some((id) => id === constant.id);
}

/** Every physical number of one edition of the content, by its id, in the content's units. */
export type PhysicsModel = Readonly<Record<PhysicsId, Levels>> & Readonly<Record<UsedConstant, number>> & {
  readonly aegl: AeglCurves;
  /** immediately dangerous to life or health, ppm */
  readonly idlh: { readonly HF: number; readonly CO: number };
  /** concentration at or below which smoke counts as cleared, ppm */
  readonly reentry: { readonly HF: number; readonly CO: number };
  /** what is compared with a guideline level when the time to it is sought */
  readonly timeToAegl: 'whole exposure' | 'momentary concentration';
  /** whether the box of air outdoors grows with the room whose place it takes */
  readonly outdoorsAtLeastRoom: boolean;
};

/**
 * Gathers the physical numbers of the content by id, so that the models read them without a search.
 * @throws when an id is missing: the content is broken, not an answer
 */
export function physicsModel(content: Content): PhysicsModel {
  const spreads = new Map(content.physics.map((spread) => [spread.id, spread]));
  const constants = new Map(content.constants.map((constant) => [constant.id, constant.value]));
  const levels = (id: PhysicsId): Levels => {
    const { low, mid, high } = found(spreads, id);
    return { low, mid, high };
  };
  const constant = (id: UsedConstant): number => found(constants, id);
  return {
    hfYield: levels('hfYield'), gasVolume: levels('gasVolume'), coFraction: levels('coFraction'), lflVentGas: levels('lflVentGas'),
    peakHeatRelease: levels('peakHeatRelease'), radiantFraction: levels('radiantFraction'), releaseDuration: levels('releaseDuration'),
    packToPackTime: levels('packToPackTime'), burningTogether: levels('burningTogether'), nearTime: levels('nearTime'), flameBase: levels('flameBase'),
    molarVolume: constant('molarVolume'), molarMassHF: constant('molarMassHF'), molarMassCO: constant('molarMassCO'),
    nominalCellVoltage: constant('nominalCellVoltage'), coDoseDenominator: constant('coDoseDenominator'), woodIgnition: constant('woodIgnition'),
    painFlux: constant('painFlux'), burnFlux: constant('burnFlux'), reachMin: constant('reachMin'),
    nearRefVolume: constant('nearRefVolume'), nearFactorMax: constant('nearFactorMax'), outdoorVolume: constant('outdoorVolume'),
    outdoorAch: constant('outdoorAch'), windSpeed: constant('windSpeed'), tempDiff: constant('tempDiff'), closedAch: constant('closedAch'),
    continuousFactor: constant('continuousFactor'), openSpread: constant('openSpread'),
    aegl: aeglCurves(content.aegl),
    idlh: { HF: content.idlh.HF, CO: content.idlh.CO },
    reentry: { HF: content.reentry.HF, CO: content.reentry.CO },
    timeToAegl: content.models.timeToAegl?.compares ?? 'momentary concentration',
    outdoorsAtLeastRoom: content.models.outdoorAir !== undefined,
  };
}

function found<Id extends string, T>(values: ReadonlyMap<Id, T>, id: Id): T {
  const value = values.get(id);
  if (value === undefined) throw new Error(`the content has no ${id}`);
  return value;
}

function aeglCurves({ durationsMin, HF, CO }: AeglTables): AeglCurves {
  return {
    HF: { '1': aeglCurve(durationsMin, HF['1']), '2': aeglCurve(durationsMin, HF['2']), '3': aeglCurve(durationsMin, HF['3']) },
    CO: { '2': aeglCurve(durationsMin, CO['2']), '3': aeglCurve(durationsMin, CO['3']) },
  };
}
