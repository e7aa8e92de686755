import type { NumberField } from '@/lib/content/model';
import type { Numbers } from './number-form';

/** A figure that an earlier edition asked for, and the fields that now ask for it in parts. */
export interface EarlierFigure { readonly field: NumberField; readonly value: number; readonly replacedBy: readonly NumberField[] }

/** Figures of an earlier edition that stand in an answer: they count, though nobody asks for them any more. */
export function earlierFigures(fields: readonly NumberField[], numbers: Numbers): readonly EarlierFigure[] {
  return fields.flatMap((field) => {
    const value = numbers[field.input];
    if (field.earlier === undefined || value === undefined) return [];
    const { replaces } = field.earlier;
    return [{ field, value, replacedBy: fields.filter((other) => replaces.includes(other.input)) }];
  });
}

/**
 * What was typed, with the earlier figures that still count: one goes once everything that replaces it is
 * given, and not before, or half a room would be worked out.
 */
export function withEarlier(fields: readonly NumberField[], before: Numbers, typed: Numbers): Numbers {
  const kept = earlierFigures(fields, before).filter(({ replacedBy }) => replacedBy.length === 0 || replacedBy.some(({ input }) => typed[input] === undefined));
  return { ...Object.fromEntries(kept.map(({ field, value }) => [field.input, value])), ...typed };
}
