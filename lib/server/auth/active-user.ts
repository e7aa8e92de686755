import 'server-only';
import { findMember } from '@/lib/db/people/find-member';
import { database } from '../database';

/** Says whether an account belongs to somebody who works in a school now. */
export async function isActiveUser(userId: string): Promise<boolean> {
  return (await findMember(database(), userId)) !== null;
}
