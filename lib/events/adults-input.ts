import { z } from 'zod';
import { idsOf } from '@/lib/forms/choices';
import { line, listOf } from '@/lib/forms/fields';
import type { Fault } from '@/lib/forms/form-state';
import { ADULT_PARTS } from './choices';
import type { EventAdult } from './event';
import { TARGET_FIELDS } from './event-input';

/** Rows of the form. */
export const ADULT_ROWS = [1, 2, 3, 4, 5, 6, 7, 8] as const;

/** The rows pass, to be read one by one. */
export const ChangeAdultsSchema = z.looseObject(TARGET_FIELDS);

/** As it is dialled: digits, perhaps with a plus, spaces, brackets or hyphens. */
const DIALLED = /^\+?[\d(][\d\s()/.-]{2,29}$/;
const Parts = listOf(z.enum(idsOf(ADULT_PARTS)));
const Name = line('Enter the name', 100);

/** Reads the adults of the form; a row without a name, a number and a part is nobody. */
export function readAdults(raw: Readonly<Record<string, unknown>>): { readonly ok: true; readonly value: readonly EventAdult[] } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const adults: EventAdult[] = [];
  const faults: Fault[] = [];
  for (const row of ADULT_ROWS) {
    const [name, phone, parts] = [text(raw[`adult${row}Name`]), text(raw[`adult${row}Phone`]), Parts.safeParse(raw[`adult${row}Parts`])];
    if (name === '' && phone === '' && (!parts.success || parts.data.length === 0)) continue;
    const named = Name.safeParse(name);
    if (!named.success) faults.push({ field: `adult${row}Name`, message: named.error.issues[0]?.message ?? 'Enter the name' });
    if (phone !== '' && !DIALLED.test(phone)) faults.push({ field: `adult${row}Phone`, message: 'Write the number as it is dialled there, digits only' });
    if (!parts.success || parts.data.length === 0) faults.push({ field: `adult${row}Parts`, message: 'Tick what this person does there' });
    else if (named.success) adults.push({ name: named.data, phone: phone === '' ? null : phone, parts: parts.data });
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: adults };
}

const text = (value: unknown): string => (typeof value === 'string' ? value.trim() : '');
