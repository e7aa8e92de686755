import type { AuditEvent } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { Member } from '../people/find-member';
import { schoolScope } from '../scope';
import type { PlaceRef } from './archive-place';

/**
 * Offers a site or an area again that was put away. Its name was kept for it.
 * @returns false when the school has put away none of this id
 */
export async function bringBackPlace(db: Db, by: Member, at: Date, { kind, id }: PlaceRef): Promise<boolean> {
  const where = { ...schoolScope(by), id, archivedAt: { not: null } };
  const data = { archivedAt: null, revision: { increment: 1 } };
  return recordChange(db, by, at, async (tx) => {
    const { count } = kind === 'site' ? await tx.site.updateMany({ where, data }) : await tx.area.updateMany({ where, data });
    const events: AuditEvent[] = count === 1 ? [{ kind: kind === 'site' ? 'site.brought-back' : 'area.brought-back', subjectId: id, data: {} }] : [];
    return { value: count === 1, events };
  });
}
