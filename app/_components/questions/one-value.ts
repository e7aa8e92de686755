import type { FormValues } from '@/lib/questionnaire/form-values';

/** What a field of one value holds; null when it holds nothing. */
export function oneValue(values: FormValues, name: string): string | null {
  return allValues(values, name)[0] ?? null;
}

/** What a field with several values holds. */
export function allValues(values: FormValues, name: string): readonly string[] {
  const held = values[name];
  return held === undefined ? [] : [held].flat();
}
