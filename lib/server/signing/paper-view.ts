import 'server-only';
import { can } from '@/lib/access/can';
import { dataOf, fileOf, type StoredFile } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import type { Paper } from '@/lib/papers/paper';
import type { Actor } from '../actor';
import { database } from '../database';
import { fingerprintOfPaper, unpackPaper } from '../papers/paper-data';
import { versionInFull } from './material';
import { type Asked, paperMakings, previewOf } from './paper-makings';

/** What the latest paper of a version says, out of the data that its file was made from; null when there is none. */
export async function keptPaper(actor: Actor, versionId: string): Promise<Paper | null> {
  if (!can(actor.role, 'document.read')) return null;
  const data = await dataOf(database(), schoolScope(actor), { kind: 'assessment', versionId });
  return data === null ? null : unpackPaper(data);
}

export type PreparedPaper =
  | { readonly ok: true; readonly paper: Paper; /** to be sent back with the signature */ readonly seen: string; readonly officer: string }
  | { readonly ok: false; readonly why: string };

/** The paper as its preparer would sign it now. */
export async function preparedPaper(actor: Actor, versionId: string, asked: Asked): Promise<PreparedPaper> {
  const found = await versionInFull(actor, versionId);
  if (found === null) return { ok: false, why: 'This assessment is not there' };
  const ready = await paperMakings(actor, found, asked, new Date());
  if (!ready.ok) return { ok: false, why: ready.faults.map(({ message }) => message).join('. ') };
  const paper = await previewOf(ready.makings, ready.today);
  return { ok: true, paper, seen: fingerprintOfPaper(paper), officer: ready.makings.officer.name };
}

/** The stored file of a version's latest paper, or of the one of a number. */
export async function paperFile(actor: Actor, versionId: string, number?: string): Promise<StoredFile | null> {
  return can(actor.role, 'document.read') ? fileOf(database(), schoolScope(actor), { kind: 'assessment', versionId }, number) : null;
}
