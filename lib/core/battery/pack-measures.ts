/** A measure that was tried and gave no figure, with the reason in words. */
export interface NoMeasure { readonly missing: string }
export type MeasureValue = number | boolean | string;

/** The answer of somebody who looked and cannot tell. It never counts as a good one. */
export const NOT_SURE = 'not sure';

/** What a check of one pack found, by the measures the rules name; undefined or absent when not measured. */
export type PackMeasures = Readonly<Record<string, MeasureValue | NoMeasure | undefined>>;

/** What is known of one measure; "not sure" is kept apart, because some rules count it as the sign. */
export type Known = { readonly is: 'value'; readonly value: MeasureValue } | { readonly is: 'doubt' } | { readonly is: 'missing'; readonly why: string | null };

/** Reads one measure. Only the record's own entries count, so that no inherited name looks like a measure. */
export function measureOf(measures: PackMeasures, name: string): Known {
  const found = Object.hasOwn(measures, name) ? measures[name] : undefined;
  if (found === undefined) return { is: 'missing', why: null };
  if (typeof found === 'object') return { is: 'missing', why: found.missing };
  return found === NOT_SURE ? { is: 'doubt' } : { is: 'value', value: found };
}
