import type { AuditEvent } from '@/lib/audit/event';
import { type Decided, refusedFor } from './decided';
import { labelKey, type Pack, type PackDetails } from './pack';
import type { PackInput } from './pack-input';

/** A day that lies ahead is a slip; today is the caller's, in the school's time zone. */
function dayFault(input: Pick<PackInput, 'boughtOn' | 'firstUsedOn'>, today: string): { readonly ok: false; readonly faults: readonly { readonly field: string; readonly message: string }[] } | null {
  const faults = (['boughtOn', 'firstUsedOn'] as const).flatMap((field) => {
    const day = input[field];
    return day !== null && day > today ? [{ field, message: 'This day has not come yet' }] : [];
  });
  return faults.length === 0 ? null : { ok: false, faults };
}

/** Decides about new packs, one or many: labels free, days past. The entry names them one by one. */
export function addPacks(inputs: readonly PackInput[], taken: readonly string[], today: string): Decided<readonly PackDetails[]> {
  const keys = new Set(taken.map(labelKey));
  for (const input of inputs) {
    const late = dayFault(input, today);
    if (late !== null) return late;
    if (keys.has(labelKey(input.label))) return refusedFor('label', `Your register has a pack with the label ${input.label} already`);
    keys.add(labelKey(input.label));
  }
  return { ok: true, change: inputs, events: [] };
}

/** Changed details, with what they were changed from. */
export interface PackCommand {
  readonly input: PackInput;
  /** revision the form was filled in from */
  readonly revision: number;
  /** today in the school's time zone, YYYY-MM-DD */
  readonly today: string;
}

/** Decides about changed details. What the label says may be put right at any time; the log keeps what stood there. */
export function changePack(pack: Pack, { input, revision, today }: PackCommand, taken: readonly string[]): Decided<PackDetails> {
  if (pack.revision !== revision) return refusedFor(null, 'Somebody else changed this pack since you opened it. Open it again; what you typed still stands here');
  const late = dayFault(input, today);
  if (late !== null) return late;
  if (taken.map(labelKey).includes(labelKey(input.label))) return refusedFor('label', 'Your register has a pack with this label already');
  const changes = changesOf(pack, input);
  const events: readonly AuditEvent[] = Object.keys(changes).length === 0 ? [] : [{ kind: 'pack.changed', subjectId: pack.id, data: { label: pack.label, changes } }];
  return { ok: true, change: input, events };
}

type Changes = Record<string, { from: string | number | boolean | null; to: string | number | boolean | null }>;

function changesOf(pack: Pack, input: PackDetails): Changes {
  const fields = Object.keys(input) as (keyof PackDetails)[];
  return Object.fromEntries(fields.filter((field) => pack[field] !== input[field]).map((field) => [field, { from: pack[field], to: input[field] }]));
}
