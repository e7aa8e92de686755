import type { AirChangesPerHour, CubicMetres, GramsPerMole, Milligrams, MilligramsPerCubicMetre, PartsPerMillion, Seconds, WattHours } from '@/lib/units/quantity';
import type { PhysicsModel } from '@/lib/core/physics-model';
import type { Gas } from './aegl-level';
import { toPpm } from './ppm';
import { coMass, type GasYields, hfMass, releaseTime } from './release';
import { perSecond, shareInAir, shareIntegral } from './well-mixed';

/** One gas released at a constant rate into a well-mixed room. */
export interface RoomGas {
  readonly gas: Gas;
  readonly mass: Milligrams;
  /** above 0 */
  readonly release: Seconds;
  /** above 0 */
  readonly volume: CubicMetres;
  /** 0 or more */
  readonly airChanges: AirChangesPerHour;
}

/** The fire and the room it burns in. */
export interface FireInRoom {
  /** packs that burn, whole, 1 or more */
  readonly packs: number;
  readonly packEnergyWh: number;
  /** above 0 */
  readonly volumeM3: number;
  /** per hour, 0 or more */
  readonly airChanges: number;
}

/** The two gases of a fire as releases into its room: what `concentrationPpm` makes a curve of. */
export function roomGases(model: PhysicsModel, fire: FireInRoom, yields: GasYields): { readonly HF: RoomGas; readonly CO: RoomGas } {
  const energy = (fire.packs * fire.packEnergyWh) as WattHours;
  const release = releaseTime(model, fire.packs);
  const volume = fire.volumeM3 as CubicMetres;
  const airChanges = fire.airChanges as AirChangesPerHour;
  return {
    HF: { gas: 'HF', mass: hfMass(yields, energy), release, volume, airChanges },
    CO: { gas: 'CO', mass: coMass(model, yields, energy), release, volume, airChanges },
  };
}

/**
 * Concentration in a well-mixed room at a time from the start of the release: rises until the release
 * ends, then decays (`shareInAir` gives the equation and its limits).
 * @param t 0 or more
 */
export function concentrationPpm(model: PhysicsModel, room: RoomGas, t: Seconds): PartsPerMillion {
  return inRoom(model, room, shareInAir(perSecond(room.airChanges), room.release, t));
}

/** Highest concentration of the whole release, which is the one at its end. */
export function peakPpm(model: PhysicsModel, room: RoomGas): PartsPerMillion {
  return concentrationPpm(model, room, room.release);
}

/**
 * Highest concentration of the room that somebody breathes who stays from the start of the release until
 * `stay`: C(min(stay, τ)), because C only falls after the release.
 */
export function highestBreathedPpm(model: PhysicsModel, room: RoomGas, stay: Seconds): PartsPerMillion {
  return concentrationPpm(model, room, Math.min(stay, room.release) as Seconds);
}

/** ∫ C dt of the room over the stay, in ppm·min (closed form, amendment A43). */
export function breathedPpmMinutes(model: PhysicsModel, room: RoomGas, stay: Seconds): number {
  return inRoom(model, room, shareIntegral(perSecond(room.airChanges), room.release, stay)) / 60;
}

/** What a share of the released mass makes in the room's air. */
function inRoom(model: PhysicsModel, room: RoomGas, share: number): PartsPerMillion {
  const molarMass = (room.gas === 'HF' ? model.molarMassHF : model.molarMassCO) as GramsPerMole;
  return toPpm(((room.mass * share) / room.volume) as MilligramsPerCubicMetre, molarMass, model.molarVolume);
}
