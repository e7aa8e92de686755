import { z } from 'zod';
import type { PackLimits } from '@/lib/content/model';
import { line, oneOf, optionalLine } from '@/lib/forms/fields';
import { type Decided, refusedFor } from '../decided';
import { mustBeIsolatedNow, type PackHistory } from '../pack-history';

/** What is asked of an isolated pack: the register moves nothing, so somebody says where the pack itself is. */
export const SayWhereSchema = z.object({
  packId: line('Choose a pack'),
  placeNow: line('Choose where the pack is now'),
  placeNote: optionalLine(200),
  inSand: oneOf(['yes', 'no', 'not sure'], 'Say whether it lies in dry sand').optional(),
});
export type SayWhere = z.output<typeof SayWhereSchema>;

export interface PlaceChange { readonly placeNow: string; readonly placeNote: string | null; readonly inSand: boolean | null; readonly reason: string }

/** Decides about the place of an isolated pack. */
export function sayWhere(limits: PackLimits, history: PackHistory, command: SayWhere): Decided<PlaceChange> {
  const { pack } = history;
  const place = limits.check?.isolation.places.find(({ id }) => id === command.placeNow);
  if (place === undefined) return refusedFor('placeNow', 'Choose where the pack is now');
  if (pack.state !== 'isolated') return refusedFor(null, 'It is not isolated, so its place stands in the register');
  const inSand = command.inSand === 'yes' ? true : command.inSand === 'no' ? false : null;
  const reason = mustBeIsolatedNow(history) ? `Where it is: ${place.label}` : `Now: ${place.label}`;
  return {
    ok: true,
    change: { placeNow: place.id, placeNote: command.placeNote, inSand, reason },
    events: [{ kind: 'pack.placed', subjectId: pack.id, data: { label: pack.label, place: place.id, note: command.placeNote, inSand } }],
  };
}
