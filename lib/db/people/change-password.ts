import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { replacePassword } from './accounts';
import type { Member } from './find-member';

export interface PasswordReplacement {
  readonly userId: string;
  /** hash of the password that is replaced */
  readonly before: string;
  readonly after: string;
  /** id of the session that goes on; null: every one ends */
  readonly keep: string | null;
}

/**
 * Replaces somebody's password, ends their other sessions and notes it in the log.
 * @returns false when the password was changed in between; then nothing was written
 */
export function writePassword(db: Db, by: Member, at: Date, replacement: PasswordReplacement): Promise<boolean> {
  return recordChange(db, by, at, async (tx) => {
    const replaced = await replacePassword(tx, { ...replacement, at });
    return { value: replaced, events: replaced ? [{ kind: 'person.password-changed', subjectId: by.personId, data: {} }] : [] };
  });
}
