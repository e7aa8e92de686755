import type { AuditEvent } from '@/lib/audit/event';
import type { PackOfIncident } from '@/lib/incidents/facts';
import { labelKey } from '@/lib/packs/pack';
import { isolatePacks } from '../packs/isolate-packs';
import type { Writing } from '../packs/write-pack';

interface LinkedTo { readonly incidentId: string; readonly number: number }

/**
 * Links packs to an incident and isolates them in the register, inside of the transaction that writes the incident. A
 * label that the register does not know is kept as it was typed. That a pack only lay near is its own cause, since such a
 * pack may be released later.
 */
export async function linkPacks(writing: Writing, { incidentId, number }: LinkedTo, packs: readonly PackOfIncident[]): Promise<readonly AuditEvent[]> {
  const { tx, scope } = writing;
  const known = await tx.pack.findMany({ where: { ...scope, labelKey: { in: packs.map(({ label }) => labelKey(label)) } }, select: { id: true, labelKey: true } });
  const idOf = (label: string): string | null => known.find((pack) => pack.labelKey === labelKey(label))?.id ?? null;
  for (const { label, part } of packs) await tx.incidentPack.create({ data: { ...scope, incidentId, packId: idOf(label), label, part } });
  const ids = (nearby: boolean) => packs.filter(({ part }) => (part === 'nearby') === nearby).flatMap(({ label }) => idOf(label) ?? []);
  return [
    ...(await isolatePacks(writing, ids(false), { reason: `Took part in incident ${number}`, cause: 'incident', incidentId })),
    ...(await isolatePacks(writing, ids(true), { reason: `Lay near in incident ${number}`, cause: 'nearby', incidentId })),
  ];
}
