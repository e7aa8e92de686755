import 'server-only';
import type { BeginAssessmentInput } from '@/lib/assessments/assessment-input';
import { currentContent } from '@/lib/content/editions';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import { listVersions, type ListedVersion } from '@/lib/db/assessments/list-assessments';
import { listSites } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';

export interface Beginnings {
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  /** signed versions that have no next one yet, the latest of each assessment */
  readonly copies: readonly ListedVersion[];
}

/** What an assessment can begin from: a place, or a signed version of one. */
export async function beginnings(actor: Actor): Promise<Beginnings> {
  const [sites, versions] = await Promise.all([listSites(database(), schoolScope(actor)), listVersions(database(), schoolScope(actor))]);
  const open = new Set(versions.filter(({ state }) => state === 'draft' || state === 'returned' || state === 'with-officer').map(({ assessmentId }) => assessmentId));
  const latest = versions.filter((one) => one.state === 'signed' && !open.has(one.assessmentId));
  return { sites: sites.map(({ id, name }) => ({ id, name })), copies: latest };
}

/** Begins an assessment with the edition in force, and leads to what the registers know already. */
export async function begin(actor: Actor, input: BeginAssessmentInput): Promise<Outcome> {
  const begun = await beginAssessment(database(), actor, new Date(), input, currentContent.version);
  return begun.ok ? { ok: true, then: `/assessments/${begun.versionId}/known` } : refused(begun.field, begun.why);
}

/** Begins the next version of a signed one: same place and title, its answers copied. */
export async function beginNext(actor: Actor, { copyFromId, season }: { readonly copyFromId: string; readonly season: string | null }): Promise<Outcome> {
  const from = (await listVersions(database(), schoolScope(actor))).find(({ id }) => id === copyFromId);
  if (from === undefined) return refused('copyFromId', 'The version to copy is not there');
  const begun = await beginAssessment(database(), actor, new Date(), { siteId: from.siteId, title: from.title, season, copyFromId }, currentContent.version);
  return begun.ok ? { ok: true, then: `/assessments/${begun.versionId}` } : refused('copyFromId', begun.why);
}
