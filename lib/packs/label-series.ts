import { ok, refuse, type Result } from '@/lib/units/quantity';
import { labelKey } from './pack';

/** Most copies made at once. */
export const MOST_COPIES = 60;
/** Far more labels than any school has; a search for a free one ends here. */
const MOST_TRIED = 10_000;

/**
 * Labels for copies of a pack: the number at the end of its label goes on ("W-09" → "W-10", "W-11"), with as many digits
 * as it has; a label without a number gets one after a blank ("Blue" → "Blue 2"). Labels that are taken are left out.
 * @param taken labels of the school, in any spelling of capitals
 */
export function labelSeries(label: string, copies: number, taken: readonly string[]): Result<readonly string[]> {
  if (!Number.isInteger(copies) || copies < 1 || copies > MOST_COPIES) return refuse(`Enter a whole number from 1 to ${MOST_COPIES}`);
  const { stem, digits } = parts(label.trim());
  const keys = new Set(taken.map(labelKey));
  const made: string[] = [];
  for (let number = Number(digits) + 1; made.length < copies; number += 1) {
    if (number > Number(digits) + MOST_TRIED) return refuse('There is no free label after this one');
    const next = stem + String(number).padStart(digits.length, '0');
    if (!keys.has(labelKey(next))) made.push(next);
  }
  return ok(made);
}

/** A label without a number counts as the first of its kind. */
function parts(label: string): { readonly stem: string; readonly digits: string } {
  const found = /^(.*?)(\d{1,9})$/u.exec(label);
  return found === null ? { stem: `${label} `, digits: '1' } : { stem: found[1] ?? '', digits: found[2] ?? '1' };
}
