import type { Seconds, WattHours } from '@/lib/units/quantity';
import type { Area } from '@/lib/content/model';
import type { LevelName, PhysicsModel } from '@/lib/core/physics-model';
import type { GasLevel, SmokeCase, SmokeLevel } from '@/lib/core/result';
import type { AeglCurve } from './aegl-curve';
import { clearingTime } from './clearing';
import { coDose } from './co-dose';
import { flammableBelow, shareOfFlammableLimit } from './flammability';
import { nearFieldPpm } from './near-field';
import { type GasYields, releaseTime, ventGas } from './release';
import { breathedPpmMinutes, peakPpm, type RoomGas, roomGases } from './room-gas';
import { smokeClass, type SmokeExposure, stayTime } from './smoke-class';
import { secondsToAegl } from './time-to-aegl';

/** A fire to show in full: the exposure without its yields, which stand at low, middle and high in turn. */
export type SmokeSituation = Omit<SmokeExposure, 'yields'> & { readonly area: Area };

/**
 * Everything the report shows of the smoke of one fire, with all yields at their low, middle and high
 * together (amendment A37). Room figures are well mixed; `peakPpm` is that of the whole release, also
 * of the part after people have left. Times count from the start of the release.
 */
export function smokeCase(model: PhysicsModel, situation: SmokeSituation): SmokeCase {
  const level = (name: LevelName): SmokeLevel => smokeLevel(model, situation, yieldsOf(model, name));
  return {
    area: situation.area,
    packs: situation.packs,
    volume: situation.volumeM3,
    airChanges: situation.airChanges,
    releaseSeconds: releaseTime(model, situation.packs),
    evacuationSeconds: situation.evacuationS,
    levels: { low: level('low'), mid: level('mid'), high: level('high') },
  };
}

/** The yields of the gases with all of them at one level. */
export function yieldsOf(model: PhysicsModel, name: LevelName): GasYields {
  return { hfYield: model.hfYield[name], gasVolume: model.gasVolume[name], coFraction: model.coFraction[name] };
}

function smokeLevel(model: PhysicsModel, situation: SmokeSituation, yields: GasYields): SmokeLevel {
  const { HF, CO } = roomGases(model, situation, yields);
  const gas = ventGas(yields, (situation.packs * situation.packEnergyWh) as WattHours);
  const stay = stayTime(situation.evacuationS as Seconds, situation.foundLater, HF.release);
  return {
    HF: gasLevel(model, HF, model.aegl.HF['2'], model.aegl.HF['3']),
    CO: gasLevel(model, CO, model.aegl.CO['2'], model.aegl.CO['3']),
    coDose: coDose(model, breathedPpmMinutes(model, CO, stay)),
    smokeClass: smokeClass(model, { ...situation, yields }),
    nearFieldPpm: situation.near ? nearFieldPpm(model, HF, stay) : 0,
    ventGasL: gas,
    // the limit stays at its middle: it is a property of the gas, not of how fiercely the packs burn
    flammableBelowL: flammableBelow(gas, model.lflVentGas.mid),
    roomShareOfLfl: shareOfFlammableLimit(gas, HF.volume, model.lflVentGas.mid),
  };
}

function gasLevel(model: PhysicsModel, room: RoomGas, level2: AeglCurve, level3: AeglCurve): GasLevel {
  return {
    massMg: room.mass,
    peakPpm: peakPpm(model, room),
    secondsToAegl2: secondsToAegl(model, level2, room),
    secondsToAegl3: secondsToAegl(model, level3, room),
    clearingMinutes: clearingTime(model, room),
  };
}
