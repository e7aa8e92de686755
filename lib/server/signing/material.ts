import 'server-only';
import { can } from '@/lib/access/can';
import type { VersionRecord } from '@/lib/assessments/version';
import { paperMaterial, type PaperMaterial } from '@/lib/db/assessments/paper-material';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { withRecord } from '../assessments/with-record';
import { database } from '../database';
import { type Scored, scoreVersion } from './score-version';

export interface VersionInFull { readonly version: VersionRecord; readonly material: PaperMaterial; readonly scored: Scored }

/** A version of the actor's school with everything that hangs on it and its result now, or null. */
export async function versionInFull(actor: Actor, versionId: string): Promise<VersionInFull | null> {
  if (!can(actor.role, 'assessment.read')) return null;
  const scope = schoolScope(actor);
  const [kept, material] = await Promise.all([readVersion(database(), scope, versionId), paperMaterial(database(), scope, versionId)]);
  if (kept === null) return null;
  const version = await withRecord(actor, kept, new Date());
  const planned = material.actions.flatMap((action) => (action.state === 'open' && action.controlId !== null ? [action.controlId] : []));
  return { version, material, scored: scoreVersion(version, planned) };
}
