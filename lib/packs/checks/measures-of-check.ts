import { cellMeasures } from '@/lib/core/battery/cell-measures';
import { limitsOfPack } from '@/lib/core/battery/limits-of-pack';
import { type MeasureValue, type NoMeasure, NOT_SURE, type PackMeasures } from '@/lib/core/battery/pack-measures';
import { resistanceRatio, type ResistanceReading } from '@/lib/core/battery/resistance-ratio';
import { warmthAtRest } from '@/lib/core/battery/warmth-at-rest';
import type { PackLimits } from '@/lib/content/model';
import { DAY_MS } from '@/lib/units/time';
import type { Pack } from '../pack';
import { cellField, type CheckTyped, DELIVERED_FIELD, FIRST_LOOK, HIT_FIELD, numberOf, RESISTANCE_FIELD, ROOM_TEMPERATURE_FIELD, type TemperatureUnit } from './check-answers';
import type { FoundInCheck } from './check-record';

type Measure = MeasureValue | NoMeasure | undefined;

/** What is known besides what was typed. */
export interface CheckContext {
  readonly limits: PackLimits;
  readonly pack: Pack;
  readonly unit: TemperatureUnit;
  /** today in the school's time zone, YYYY-MM-DD */
  readonly today: string;
  /** charges of its whole life; null when nobody knows those before the register */
  readonly charges: number | null;
  /** the first reading of its resistance; null when there is none */
  readonly firstResistance: ResistanceReading | null;
}

/** "Not in the last three days": a school may ask for 72 hours at most, and the rules fire below their figure. */
const NO_RECENT_HIT_H = 72;
const DAYS_A_MONTH = 365.25 / 12;

/** The measures of the content, out of what was typed and what the register says. What was not asked is undefined. */
export function measuresOfCheck(typed: CheckTyped, context: CheckContext): Omit<FoundInCheck, 'result'> {
  const { limits, pack, unit } = context;
  const cellVolts = voltsOf(typed, pack, unit);
  const resistance = resistanceOf(typed, cellVolts, unit);
  const given: Record<string, Measure> = {
    ...yesNo(typed, limits),
    ...warmth(typed, context),
    ...fromRegister(typed, context),
    hoursSinceImpact: impact(typed, unit),
    hoursSinceCharge: numberOf(typed, 'hoursSinceCharge', unit),
    hoursFull: numberOf(typed, 'hoursFull', unit),
    ...cells(cellVolts, limits),
    ...wear(typed, resistance, context),
  };
  return { measures: known(given), cellVolts, resistance: resistance === null ? [] : [resistance] };
}

function known(given: Readonly<Record<string, Measure>>): PackMeasures {
  return Object.fromEntries(Object.entries(given).flatMap(([name, value]): [string, MeasureValue | NoMeasure][] => (value === undefined ? [] : [[name, value]])));
}

function yesNo(typed: CheckTyped, { check }: PackLimits): Record<string, Measure> {
  return Object.fromEntries((check?.measures ?? []).filter(({ values }) => values === 'yes or no').map(({ id }) => [id, said(typed[id])]));
}

function said(answer: string | undefined): Measure {
  switch (answer) {
    case 'yes': return true;
    case 'no': return false;
    case 'not sure': return NOT_SURE;
    case FIRST_LOOK: return { missing: 'this was the first look' };
    default: return undefined;
  }
}

/** Within the rest after a flight, warmth says nothing of the pack (the content's definition). */
function warmth(typed: CheckTyped, { limits, pack, unit }: CheckContext): Record<string, Measure> {
  const [temperature, room] = [numberOf(typed, 'packTemperature', unit), numberOf(typed, ROOM_TEMPERATURE_FIELD, unit)];
  const hoursSinceUse = numberOf(typed, 'hoursSinceUse', unit);
  const own = limitsOfPack(limits, pack.cellType);
  const rules = own.ok ? own.value : limits;
  const rise = warmthAtRest(rules, { pack: temperature ?? 0, room: room ?? 0, hoursSinceUse: hoursSinceUse ?? null });
  const atRest: Measure = rise.ok ? undefined : { missing: rise.reason };
  return {
    hoursSinceUse,
    packTemperature: temperature,
    ambientTemperature: room,
    temperatureRise: temperature === undefined || room === undefined ? atRest : rise.ok ? rise.value : atRest,
    feltWarm: atRest ?? said(typed['feltWarm']),
  };
}

function fromRegister(typed: CheckTyped, { pack, today, charges }: CheckContext): Record<string, Measure> {
  const since = pack.firstUsedOn ?? pack.boughtOn;
  return {
    cellType: pack.cellType,
    secondHand: pack.secondHand ?? said(typed['secondHand']),
    ageMonths: since === null ? { missing: 'the register does not say when it was bought' } : monthsBetween(since, today),
    cycles: charges ?? { missing: 'the register does not say how often it was charged before' },
  };
}

function monthsBetween(day: string, today: string): number {
  const days = (Date.parse(`${today}T00:00:00Z`) - Date.parse(`${day}T00:00:00Z`)) / DAY_MS;
  return Math.floor(Math.max(0, days) / DAYS_A_MONTH);
}

function impact(typed: CheckTyped, unit: TemperatureUnit): Measure {
  switch (typed[HIT_FIELD]) {
    case 'no': return NO_RECENT_HIT_H;
    case 'hours': return numberOf(typed, 'hoursSinceImpact', unit);
    case 'not sure': return NOT_SURE;
    default: return undefined;
  }
}

/** None of them while one is open: an empty field is no silent cell. */
function voltsOf(typed: CheckTyped, pack: Pack, unit: TemperatureUnit): readonly (number | null)[] {
  const volts = Array.from({ length: pack.series }, (_, at) => numberOf(typed, cellField(at + 1), unit));
  const read = volts.filter((cell) => cell !== undefined);
  return read.length < volts.length ? [] : read.map((cell) => (cell === 0 ? null : cell));
}

function cells(volts: readonly (number | null)[], { silentBelow }: PackLimits): Record<string, Measure> {
  return volts.length === 0 ? {} : { ...cellMeasures(volts, silentBelow) };
}

function resistanceOf(typed: CheckTyped, volts: readonly (number | null)[], unit: TemperatureUnit): ResistanceReading | null {
  const milliohms = numberOf(typed, RESISTANCE_FIELD, unit);
  if (milliohms === undefined) return null;
  const reading = volts.filter((cell) => cell !== null);
  const cellVoltage = reading.length === 0 ? null : reading.reduce((sum, cell) => sum + cell, 0) / reading.length;
  return { milliohms, temperature: numberOf(typed, 'packTemperature', unit) ?? null, cellVoltage };
}

function wear(typed: CheckTyped, now: ResistanceReading | null, { limits, pack, unit, firstResistance }: CheckContext): Record<string, Measure> {
  const delivered = numberOf(typed, DELIVERED_FIELD, unit);
  return {
    resistanceRatio: now === null ? undefined : ratio(now, firstResistance, limits),
    capacityShare: delivered === undefined ? undefined : delivered / (pack.capacityMah * pack.parallel),
  };
}

function ratio(now: ResistanceReading, first: ResistanceReading | null, { check }: PackLimits): Measure {
  if (first === null || check === undefined) return { missing: 'this is the first reading: later ones are held against it' };
  const compared = resistanceRatio(now, first, check.alike);
  return compared.ok ? compared.value : { missing: compared.reason };
}
