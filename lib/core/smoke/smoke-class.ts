import type { Minutes, Seconds } from '@/lib/units/quantity';
import type { SeverityClass } from '@/lib/content/model';
import type { PhysicsModel } from '@/lib/core/physics-model';
import { coDose } from './co-dose';
import { coClass, hfClass } from './gas-class';
import { nearFieldPpm } from './near-field';
import type { GasYields } from './release';
import { breathedPpmMinutes, type FireInRoom, highestBreathedPpm, roomGases } from './room-gas';

/** One burning of packs in one room, and the people in it. */
export interface SmokeExposure extends FireInRoom {
  readonly yields: GasYields;
  /** time until everybody has left, 0 or more */
  readonly evacuationS: number;
  /** nobody is there at the start: people stay at least until the last pack is out */
  readonly foundLater: boolean;
  /** people stand beside the packs (the rule and the people both say so) */
  readonly near: boolean;
  /** people who share that air; 0 where the many-people rule is not applied */
  readonly sharing: number;
}

/** Many people (amendment A19, our judgement): so many sharing air of at least this class count one class higher. */
const MANY_PEOPLE = 10;
const MANY_FROM_CLASS = 3;

/** How long people breathe the smoke: the evacuation time, and at least the release where it is found later. */
export function stayTime(evacuation: Seconds, foundLater: boolean, release: Seconds): Seconds {
  return foundLater && release > evacuation ? release : evacuation;
}

/**
 * Severity class of the smoke for one exposed person: thresholds crossed before leaving, the worse of HF
 * and CO, the worse of room and near field; one class more where many share bad air. This is the
 * content's smokeRule (amendments A17 to A20, A42, A43), our judgement resting on published thresholds.
 * @returns 1 to 5; never falls with more packs, energy, yield or time, nor in a smaller room
 */
export function smokeClass(model: PhysicsModel, exposure: SmokeExposure): SeverityClass {
  const { HF, CO } = roomGases(model, exposure, exposure.yields);
  const stay = stayTime(exposure.evacuationS as Seconds, exposure.foundLater, HF.release);
  const minutes = (stay / 60) as Minutes;
  const dose = coDose(model, breathedPpmMinutes(model, CO, stay));
  const room = larger(
    hfClass(model, highestBreathedPpm(model, HF, stay), minutes),
    coClass(model, highestBreathedPpm(model, CO, stay), minutes, dose),
  );
  let worst = room;
  if (exposure.near) {
    worst = larger(worst, hfClass(model, nearFieldPpm(model, HF, stay), minutes));
    worst = larger(worst, coClass(model, nearFieldPpm(model, CO, stay), minutes, dose));
  }
  // the many-people rule looks at the room alone: few can stand beside the packs
  return exposure.sharing >= MANY_PEOPLE && room >= MANY_FROM_CLASS ? larger(worst, oneHigher(room)) : worst;
}

function larger(one: SeverityClass, other: SeverityClass): SeverityClass { return one > other ? one : other; }
function oneHigher(severity: SeverityClass): SeverityClass { return severity >= 5 ? 5 : ((severity + 1) as SeverityClass); }
