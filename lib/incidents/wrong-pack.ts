import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';
import { labelKey } from '@/lib/packs/pack';
import { isolationOf, type PackHistory } from '@/lib/packs/pack-history';
import type { NewState } from '@/lib/packs/states/new-state';
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

interface Righted {
  readonly before: Facts['packs'];
  readonly after: Facts['packs'];
  /** the pack that was meant; isolated like any other of an incident */
  readonly added: Facts['packs'];
  readonly state: NewState;
}

/**
 * Decides whether a pack that an incident names by mistake leaves isolation again: only while this incident alone is what
 * isolated it. A sign seen on it, another incident or a hand of somebody keeps it where it is. It goes to watch, or back to
 * retired: a check comes before its next charge, as for any pack that was away.
 */
export function rightWrongPack(incident: Pick<IncidentRecord, 'id' | 'number' | 'state' | 'facts'>, history: PackHistory, { insteadLabel, reason }: Pick<WrongPack, 'insteadLabel' | 'reason'>): Decision<Righted> {
  const { pack } = history;
  const before = incident.facts.packs;
  const named = before.find(({ label }) => labelKey(label) === labelKey(pack.label));
  if (incident.state === 'closed') return { ok: false, why: [NOT_OPEN] };
  const isolation = isolationOf(history);
  if (isolation === null) return { ok: false, why: [`${pack.label} is not isolated: correct the packs of the incident instead`] };
  if (!isolation.changes.some(({ incidentId }) => incidentId === incident.id)) return { ok: false, why: [`This incident did not isolate ${pack.label}`] };
  const others = isolation.changes.filter(({ cause, incidentId }) => cause !== null && incidentId !== incident.id);
  if (others.length > 0) return { ok: false, why: [`${pack.label} is isolated for another reason too: ${others.map((change) => change.reason).join('; ')}`] };
  if (insteadLabel !== null && labelKey(insteadLabel) === labelKey(pack.label)) return { ok: false, why: ['This is the same label'] };
  const known = insteadLabel !== null && before.some(({ label }) => labelKey(label) === labelKey(insteadLabel));
  const added = insteadLabel === null || known ? [] : [{ label: insteadLabel, part: named?.part ?? 'involved' }];
  const to = isolation.changes.at(-1)?.from === 'retired' ? 'retired' : 'watch';
  return { ok: true, change: { before, after: [...before.filter((one) => one !== named), ...added], added, state: { to, reason: `Named by mistake in incident ${incident.number}: ${reason}`, cause: null, incidentId: incident.id } } };
}
