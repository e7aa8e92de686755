import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope } from '../scope';

export interface PlaceRef { readonly kind: 'site' | 'area'; readonly id: string }

/**
 * Puts a site or an area away: no longer offered, still named by everything that refers to it.
 * @returns false when the school has none of this id in use
 */
export async function archivePlace(db: Db, by: Member, at: Date, { kind, id }: PlaceRef): Promise<boolean> {
  const where = { ...schoolScope(by), id, archivedAt: null };
  const data = { archivedAt: at, revision: { increment: 1 } };
  return recordChange(db, by, at, async (tx) => {
    const { count } = kind === 'site' ? await tx.site.updateMany({ where, data }) : await tx.area.updateMany({ where, data });
    const events: AuditEvent[] = count === 1 ? [{ kind: kind === 'site' ? 'site.archived' : 'area.archived', subjectId: id, data: {} }] : [];
    return { value: count === 1, events };
  });
}
