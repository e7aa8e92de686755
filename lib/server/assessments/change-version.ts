import 'server-only';
import type { ScopeInput, SettingsInput } from '@/lib/assessments/assessment-input';
import { changeScope, changeSettings } from '@/lib/db/assessments/change-scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { readOpenVersion } from './open-version';

/** Saves who has been there, what was seen and what was taken on trust. */
export async function saveScope(actor: Actor, input: ScopeInput): Promise<Outcome> {
  const closed = await whyNot(actor, input.versionId);
  if (closed !== null) return refused(null, closed);
  const done = await changeScope(database(), actor, new Date(), input);
  return done.ok ? { ok: true, then: `/assessments/${input.versionId}` } : refused(null, done.why);
}

/** Saves the matrix and the effort that can be spent. */
export async function saveSettings(actor: Actor, input: SettingsInput): Promise<Outcome> {
  const closed = await whyNot(actor, input.versionId);
  if (closed !== null) return refused(null, closed);
  const done = await changeSettings(database(), actor, new Date(), input);
  return done.ok ? { ok: true, then: `/assessments/${input.versionId}` } : refused(null, done.why);
}

async function whyNot(actor: Actor, versionId: string): Promise<string | null> {
  const open = await readOpenVersion(actor, versionId);
  return open === null ? 'This assessment is not there' : open.closed;
}
