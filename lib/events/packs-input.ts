import { z } from 'zod';
import { listOf } from '@/lib/forms/fields';
import type { Fault } from '@/lib/forms/form-state';
import { TARGET_FIELDS } from './event-input';

/** Which packs go along: ticked in the list shown, and labels typed or scanned. What the list did not show stays as it is. */
export const ChangePacksSchema = z.object({
  ...TARGET_FIELDS,
  /** ids the list showed: of these what is not ticked is taken off */
  shown: listOf(z.string()),
  packs: listOf(z.string()),
  typed: z.string().max(4000, 'Use at most 4000 characters').default(''),
  /** which button: only what is ticked and typed, or all that are ready too */
  also: z.enum(['ready', 'none']).catch('none').default('none'),
});

/** A pack that may be chosen. `ready`: in use, checked, and nothing stops it from travelling. */
export interface Choosable { readonly id: string; readonly label: string; readonly key: string; readonly ready: boolean }

/** A label as its square code holds it: the address of the pack, or the label itself. */
const OF_ADDRESS = /\/packs\/([0-9a-f-]{36})/i;

/** Returns the ids chosen, in the register's order, or which typed labels the register does not have. */
export function choosePacks(before: readonly string[], { shown, packs, typed, also }: Omit<z.output<typeof ChangePacksSchema>, 'eventId' | 'revision'>, register: readonly Choosable[], keyOf: (label: string) => string): { readonly ok: true; readonly value: readonly string[] } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const chosen = new Set([...before.filter((id) => !shown.includes(id)), ...packs]);
  const missing: string[] = [];
  for (const word of typed.split(/[\n,;]+/).map((one) => one.trim()).filter((one) => one !== '')) {
    const id = OF_ADDRESS.exec(word)?.[1]?.toLowerCase();
    const found = register.find((pack) => pack.id === id || pack.key === keyOf(word));
    if (found === undefined) missing.push(word);
    else chosen.add(found.id);
  }
  if (missing.length > 0) return { ok: false, faults: [{ field: 'typed', message: `The register has no pack ${missing.map((word) => `“${word.slice(0, 60)}”`).join(', ')}` }] };
  if (also === 'ready') for (const pack of register) if (pack.ready && shown.includes(pack.id)) chosen.add(pack.id);
  return { ok: true, value: register.filter(({ id }) => chosen.has(id)).map(({ id }) => id) };
}
