import { z } from 'zod';
import { line, oneOf, optionalLine, optionalText } from '@/lib/forms/fields';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import { AREA_NUMBERS, type AreaNumber, type AreaPart, partsOf } from './area-fields';
import { AIR_MODES, AREA_USES, type AreaDetails, DETECTORS, FUEL_LOADS, SURFACES } from './place';
import { readMeasure, type Units } from './typed-measure';

const NOT_KNOWN = '';
/** One of a list, or nothing: then null. */
function orNull<const Values extends readonly [string, ...string[]]>(values: Values) {
  return oneOf([NOT_KNOWN, ...values], 'Choose one of the list').optional().transform((value): Values[number] | null => (value === undefined || value === NOT_KNOWN ? null : value));
}

const numberFields = Object.fromEntries(Object.keys(AREA_NUMBERS).map((name) => [name, z.string().optional()])) as Record<AreaNumber, z.ZodOptional<z.ZodString>>;

const Typed = z.object({
  /** of the form as it was shown, so that what was typed is read as it was meant */
  units: oneOf(['metric', 'us'], 'The units are missing'),
  use: oneOf(AREA_USES, 'Choose what the area is for'),
  name: line('Enter a name, such as Charging table or Cupboard A', 100),
  outdoors: oneOf(['no', 'yes'], 'Say whether it is outdoors'),
  ...numberFields,
  airMode: orNull(AIR_MODES),
  openings: optionalLine(200),
  surface: orNull(SURFACES),
  detectors: orNull(DETECTORS),
  fuelLoad: orNull(FUEL_LOADS),
  evacuationMin: optionalTypedNumber({ least: 0, most: 30, unit: 'min', whole: true }),
  evacuationS: optionalTypedNumber({ least: 0, most: 59, unit: 's', whole: true }),
  notes: optionalText(),
});

/** What is asked about an area; gives it in SI, and without what its use does not ask. */
export const AreaInputSchema = Typed.transform((typed, context): AreaDetails => {
  const numbers = readNumbers(typed, typed.units, (field, message) => { context.addIssue({ code: 'custom', path: [field], message, input: typed[field] }); });
  const { name, use, airMode, openings, surface, detectors, fuelLoad, notes } = typed;
  const evacuationS = typed.evacuationMin === null && typed.evacuationS === null ? null : (typed.evacuationMin ?? 0) * 60 + (typed.evacuationS ?? 0);
  if (evacuationS === 0) context.addIssue({ code: 'custom', path: ['evacuationS'], message: 'Nobody is out in no time: leave both empty when it was never timed', input: typed.evacuationS });
  const outdoors = typed.outdoors === 'yes';
  return withoutUnasked({ ...numbers, name, use, outdoors, airMode, openings, surface, detectors, fuelLoad, evacuationS, notes });
});

type Numbers = Record<AreaNumber, number | null>;

function readNumbers(typed: Partial<Record<AreaNumber, string>>, units: Units, fault: (field: AreaNumber, message: string) => void): Numbers {
  const fields = Object.keys(AREA_NUMBERS) as AreaNumber[];
  return Object.fromEntries(fields.map((field) => {
    const read = readMeasure(field, typed[field] ?? '', units);
    if (!read.ok) fault(field, read.reason);
    return [field, read.ok ? read.value : null];
  })) as Numbers;
}

const FIELDS_OF_PART: Readonly<Record<AreaPart, readonly (keyof AreaDetails)[]>> = {
  size: ['lengthM', 'widthM', 'heightM'],
  air: ['airMode', 'airChangesPerHour', 'airFlowM3PerH', 'openingWidthM', 'openingHeightM', 'openings'],
  surface: ['surface'],
  distances: ['personDistanceM', 'combustibleDistanceM', 'clearHeightM'],
  fuel: ['fuelLoad'],
  detectors: ['detectors'],
  people: ['peoplePresent'],
  leaving: ['exits', 'evacuationS'],
};

/** The form without client script shows every part; what its use does not ask is not kept. */
function withoutUnasked(area: AreaDetails): AreaDetails {
  const asked = partsOf(area.use, area.outdoors);
  const parts = Object.keys(FIELDS_OF_PART) as AreaPart[];
  const dropped = parts.filter((part) => !asked.includes(part)).flatMap((part) => FIELDS_OF_PART[part]);
  return { ...area, ...Object.fromEntries(dropped.map((field) => [field, null])) };
}
