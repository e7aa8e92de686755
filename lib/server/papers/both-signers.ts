import 'server-only';
import { signerDetails } from '@/lib/db/assessments/paper-material';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused } from '../forms/outcome';

export type SignerDetails = NonNullable<Awaited<ReturnType<typeof signerDetails>>>;
export type BothSigners = { readonly ok: true; readonly preparer: SignerDetails; readonly officer: SignerDetails } | ReturnType<typeof refused>;

/** The two who sign a paper, or why they cannot: its preparer, and another who is a safety officer of the school. */
export async function bothSigners(actor: Actor, { preparedById, officerId }: { readonly preparedById: string; readonly officerId: string }): Promise<BothSigners> {
  const [preparer, officer] = await Promise.all([preparedById, officerId].map((personId) => signerDetails(database(), schoolScope(actor), personId)));
  if (!preparer) return refused(null, 'Whoever prepared it is not in this school any more');
  if (!officer?.active || officer.role !== 'safety-officer' || officerId === preparedById) return refused('officerId', 'Choose a safety officer of the school who did not prepare it');
  return { ok: true, preparer, officer };
}
