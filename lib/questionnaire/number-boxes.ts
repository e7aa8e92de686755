import type { NumberField } from '@/lib/content/model';

/** One box on the page. Most fields have one; a time has two. */
export interface NumberBox {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly field: NumberField;
  /** what a 1 typed in this box is worth in the field's own unit */
  readonly worth: number;
}

const MINUTE = 60;
const TENTH = 0.1;

/** The boxes in which a field is asked for: what is stored stays in seconds, or a share of 0 to 1. */
export function boxesOf(field: NumberField): readonly NumberBox[] {
  const { input, label } = field;
  if (field.entry === 'minutes and seconds') {
    return [
      { name: `${input}-min`, label: 'minutes', unit: '', field, worth: MINUTE },
      { name: `${input}-s`, label: 'seconds', unit: '', field, worth: 1 },
    ];
  }
  return [{ name: input, label, unit: field.entry === 'of ten' ? 'of ten' : field.unit, field, worth: field.entry === 'of ten' ? TENTH : 1 }];
}

/** Fields that are asked for today; those of an earlier edition are still read. */
export function askedFields(fields: readonly NumberField[]): readonly NumberField[] {
  return fields.filter((field) => field.earlier === undefined);
}

/** What is to be put in the boxes for a value, in their order. */
export function partsOf(field: NumberField, value: number): readonly number[] {
  if (field.entry === 'minutes and seconds') {
    const minutes = Math.floor(value / MINUTE);
    return [minutes, withoutDust(value - minutes * MINUTE)];
  }
  return [field.entry === 'of ten' ? withoutDust(value / TENTH) : value];
}

/** 0.31 / 0.1 is 3.1 and a speck; nobody typed the speck. */
const withoutDust = (value: number): number => Number(value.toPrecision(12));

/** The value of what was typed in the boxes of a field, in its own unit; undefined when all are empty. */
export function valueOf(boxes: readonly NumberBox[], typed: readonly (number | undefined)[]): number | undefined {
  if (typed.every((number) => number === undefined)) return undefined;
  return withoutDust(boxes.reduce((sum, box, index) => sum + (typed[index] ?? 0) * box.worth, 0));
}
