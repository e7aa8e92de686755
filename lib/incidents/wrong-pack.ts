import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';
import type { Facts } from './facts';
import type { IncidentRecord } from './incident';
import { type Decision, NOT_OPEN } from './standing';

/** What is asked when an incident names a pack that had nothing to do with it. */
export const WrongPackSchema = z.object({
  incidentId: line('The form has lost its incident'),
  packId: line('The form has lost its pack'),
  /** the pack that was meant, when it is known */
  insteadLabel: optionalLine(60),
  reason: line('Write how you know that it was another one', 400),
  sure: z.literal('yes', { error: 'Tick it, or leave the pack isolated' }),
});
export type WrongPack = z.output<typeof WrongPackSchema>;

/** What the register says of the pack: why it is isolated, the latest change first; null when it is not. */
export interface NamedPack {
  readonly label: string;
  readonly isolation: readonly { readonly from: string | null; readonly cause: string | null; readonly incidentId: string | null; readonly reason: string }[] | null;
}

interface Righted {
  readonly before: Facts['packs'];
  readonly after: Facts['packs'];
  /** the pack that was meant; isolated like any other of an incident */
  readonly added: Facts['packs'];
  readonly to: 'watch' | 'retired';
  readonly reason: string;
}

/**
 * Decides whether a pack that an incident names by mistake leaves isolation again: only while this incident alone is what
 * isolated it. A sign seen on it, another incident or a hand of somebody keeps it where it is. It goes to watch, or back to
 * retired: a check comes before its next charge, as for any pack that was away.
 */
export function rightWrongPack(incident: Pick<IncidentRecord, 'id' | 'number' | 'state' | 'facts'>, { label, isolation }: NamedPack, { insteadLabel, reason }: Pick<WrongPack, 'insteadLabel' | 'reason'>): Decision<Righted> {
  if (incident.state === 'closed') return { ok: false, why: [NOT_OPEN] };
  if (isolation === null) return { ok: false, why: [`${label} is not isolated: correct the packs of the incident instead`] };
  if (!isolation.some(({ incidentId }) => incidentId === incident.id)) return { ok: false, why: [`This incident did not isolate ${label}`] };
  const others = isolation.filter(({ cause, incidentId }) => cause !== null && incidentId !== incident.id);
  if (others.length > 0) return { ok: false, why: [`${label} is isolated for another reason too: ${others.map((change) => change.reason).join('; ')}`] };
  if (insteadLabel !== null && same(insteadLabel, label)) return { ok: false, why: ['This is the same label'] };
  const before = incident.facts.packs;
  const named = before.find((pack) => same(pack.label, label));
  const added = insteadLabel === null || before.some((pack) => same(pack.label, insteadLabel)) ? [] : [{ label: insteadLabel, part: named?.part ?? 'involved' }];
  const to = isolation.at(-1)?.from === 'retired' ? 'retired' : 'watch';
  return { ok: true, change: { before, after: [...before.filter((one) => one !== named), ...added], added, to, reason: `Named by mistake in incident ${incident.number}: ${reason}` } };
}

/** As the register compares labels: capital letters and blanks make no other pack. */
function same(one: string, other: string): boolean {
  const key = (label: string): string => label.trim().replace(/\s+/gu, ' ').toLowerCase();
  return key(one) === key(other);
}
