import 'server-only';
import { cache } from 'react';
import { can } from '@/lib/access/can';
import { isOpen } from '@/lib/assessments/standing';
import type { VersionRecord } from '@/lib/assessments/version';
import { type Walk, walkOf } from '@/lib/assessments/walk';
import { contentByVersion } from '@/lib/content/editions';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';

/** A version with its questions, as one person of its school may see it. */
export interface OpenVersion {
  readonly version: VersionRecord;
  readonly walk: Walk;
  /** why this person may not answer here, in words; null when they may */
  readonly closed: string | null;
}

/** A version of the actor's school as it is now, or null when there is none of that id or the role may not read it. */
export async function readOpenVersion(actor: Actor, versionId: string): Promise<OpenVersion | null> {
  if (!can(actor.role, 'assessment.read')) return null;
  const version = await readVersion(database(), schoolScope(actor), versionId);
  if (version === null) return null;
  const content = contentByVersion(version.contentVersion);
  if (content === undefined) throw new Error(`there is no edition ${version.contentVersion} of the content`);
  return { version, walk: walkOf(content, version), closed: whyClosed(actor, version) };
}

/** The same for a page and its parts: read once per request. */
export const openVersion = cache(readOpenVersion);

function whyClosed(actor: Actor, version: VersionRecord): string | null {
  if (!isOpen(version.state)) return version.state === 'with-officer' ? 'It lies with the officer, so its answers do not change now.' : 'This version is closed: its answers do not change any more.';
  const may = can(actor.role, 'assessment.answer', { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } });
  if (may) return null;
  return actor.role === 'safety-officer' ? `${version.preparedByName} prepares it. An officer who thinks an answer wrong returns it with a comment.` : 'Your role reads assessments and does not answer them.';
}
