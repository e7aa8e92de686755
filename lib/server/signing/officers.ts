import 'server-only';
import { listMembers } from '@/lib/db/people/members';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';

export interface OfficerChoice { readonly value: string; readonly label: string }

/** Safety officers who could check what somebody prepared: all but that person. */
export async function officersFor(actor: Actor, preparedById: string): Promise<readonly OfficerChoice[]> {
  const members = await listMembers(database(), schoolScope(actor));
  return members.filter(({ role, isActive, personId }) => role === 'safety-officer' && isActive && personId !== preparedById).map(({ personId, name, post }) => ({ value: personId, label: post === '' ? name : `${name}, ${post}` }));
}
