import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** Whether the preparer has signed the paper of this version that is not replaced: the one the officer would sign. */
export async function preparedSigned(db: Db | Tx, scope: SchoolScope, versionId: string): Promise<boolean> {
  return await db.signature.count({ where: { ...scope, part: 'preparer', document: { versionId, kind: 'assessment', replacedAt: null } } }) > 0;
}
