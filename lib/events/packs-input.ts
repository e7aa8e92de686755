import { z } from 'zod';
import { line, listOf } from '@/lib/forms/fields';
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

/** One pack more, by its label as it was read or typed. */
export const AddPackSchema = z.object({ eventId: TARGET_FIELDS.eventId, label: line('Give the label of a pack', 200) });

/** A label as its square code holds it: the address of the pack, or the label itself. */
const OF_ADDRESS = /\/packs\/([0-9a-f-]{36})/i;

/** Returns the ids chosen, in the register's order, or which typed labels the register does not have. */
export function choosePacks(before: readonly string[], { shown, packs, typed, also }: Omit<z.output<typeof ChangePacksSchema>, 'eventId' | 'revision'>, register: readonly Choosable[], keyOf: (label: string) => string): { readonly ok: true; readonly value: readonly string[] } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const chosen = new Set([...before.filter((id) => !shown.includes(id)), ...packs]);
  const missing: string[] = [];
  for (const word of typed.split(/[\n,;]+/).map((one) => one.trim()).filter((one) => one !== '')) {
    const found = byLabel(register, word, keyOf);
    if (found === undefined) missing.push(word);
    else chosen.add(found.id);
  }
  if (missing.length > 0) return { ok: false, faults: [{ field: 'typed', message: `The register has no pack ${missing.map((word) => `“${word.slice(0, 60)}”`).join(', ')}` }] };
  if (also === 'ready') for (const pack of register) if (pack.ready && shown.includes(pack.id)) chosen.add(pack.id);
  return { ok: true, value: register.filter(({ id }) => chosen.has(id)).map(({ id }) => id) };
}

function byLabel<One extends Choosable>(register: readonly One[], word: string, keyOf: (label: string) => string): One | undefined {
  const id = OF_ADDRESS.exec(word)?.[1]?.toLowerCase();
  return register.find((pack) => pack.id === id || pack.key === keyOf(word));
}

/** A pack that somebody stands beside and would like to add. */
export interface Addable extends Choosable {
  /** still with the school */
  readonly here: boolean;
  /** why it does not go along, after its label; null when it may */
  readonly stays: string | null;
}

/** Returns the ids chosen with one pack more and what is said of it, or why it was not added. What stays here is refused: whoever reads its label stands beside it. */
export function addByLabel(before: readonly string[], word: string, register: readonly Addable[], keyOf: (label: string) => string): { readonly ok: true; readonly value: readonly string[]; readonly said: string } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const refuse = (message: string) => ({ ok: false, faults: [{ field: 'label', message }] }) as const;
  const found = byLabel(register, word, keyOf);
  if (found === undefined) return refuse('Your register has no pack with this label. Nothing was added.');
  const all = register.filter(({ id, here }) => here || before.includes(id)).length;
  const isOnList = before.includes(found.id);
  // First, since it may have been isolated after it was chosen.
  if (found.stays !== null) return refuse(`${found.label} ${found.stays}. ${isOnList ? 'It is still on the list: untick it and save.' : 'It was not added.'}`);
  if (isOnList) return refuse(`${found.label} is on the list already, ${before.length} of ${all}.`);
  return { ok: true, value: [...before, found.id], said: `${found.label} added, ${before.length + 1} of ${all}.${found.ready ? '' : ' Not ready yet: look at its last check.'}` };
}
