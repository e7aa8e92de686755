import { signAgain, submit } from '@/lib/assessments/lifecycle';
import { ScopeSchema, type Settings } from '@/lib/assessments/version';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { keepDocument } from '../documents/keep-document';
import { type NewDocument, sha256Of, type SignatureOf } from '../documents/write-document';
import { schoolScope, type SchoolScope } from '../scope';
import type { Tx } from '../transaction';
import type { Author } from './begin-assessment';
import { type KeptScore, keepScore } from './keep-score';
import { moveVersion, standingOf } from './moves';
import { type Done, notDone, NOT_THERE, nothing, OVERTAKEN, type Written } from './not-done';

export interface HandOver {
  readonly versionId: string;
  /** revision of the version that the paper was made from */
  readonly revision: number;
  /** who is to check it: the paper names them */
  readonly officerId: string;
  readonly score: KeptScore;
  readonly document: NewDocument & { readonly bytes: readonly [Uint8Array, Uint8Array] };
  readonly signature: SignatureOf;
  readonly certificateFingerprint: string;
  readonly reviewBy: string;
  /** as the result was made with, the school's own record among them: it is kept so from now on */
  readonly settings: Settings;
  readonly openStops: readonly string[];
}

/**
 * Hands a version to the officer with the preparer's signature, or signs it once more after the officer's
 * decisions changed the paper: version, result, paper, signature and log entries, all or nothing.
 */
export async function handOver(db: Db, by: Author, at: Date, what: HandOver): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const standing = await standingOf(tx, scope, what.versionId);
    if (standing === null) return nothing(NOT_THERE);
    const again = standing.state === 'with-officer';
    const decision = again ? signAgain(standing, by.personId) : submit(standing, by.personId);
    if (!decision.ok) return nothing(notDone(decision.why));
    if (standing.revision !== what.revision || !(await moveVersion(tx, scope, what.versionId, standing, { state: 'with-officer', submittedAt: at, reviewBy: what.reviewBy, scopeJson: await scopeWith(tx, scope, what), settingsJson: JSON.stringify(what.settings) }))) return nothing(OVERTAKEN);
    const scoreId = await keepScore(tx, scope, at, what.versionId, what.score);
    const kept = await keepDocument(tx, scope, at, { ...what.document, of: { versionId: what.versionId, scoreId } }, { ...what.signature, certificateFingerprint: what.certificateFingerprint }, 'part-signed');
    const [, signed] = what.document.bytes;
    return { value: { ok: true }, events: [
      { kind: 'score.kept', subjectId: what.versionId, data: { scoreId, inputHash: what.score.inputHash, engineVersion: what.score.engineVersion, contentVersion: what.score.contentVersion, seed: what.score.seed, draws: what.score.draws, resultHash: what.score.resultHash } },
      ...kept,
      ...(again ? [] : [{ kind: 'assessment.submitted' as const, subjectId: what.versionId, data: { openStops: [...what.openStops] } }]),
      { kind: 'assessment.signed', subjectId: what.versionId, data: { part: 'preparer', documentId: what.document.id, certificateFingerprint: what.certificateFingerprint, sha256: sha256Of(signed) } },
    ] };
  });
}

async function scopeWith(tx: Tx, scope: SchoolScope, { versionId, officerId }: HandOver): Promise<string> {
  const version = await tx.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, select: { scopeJson: true } });
  return JSON.stringify({ ...ScopeSchema.parse(JSON.parse(version?.scopeJson ?? '{}')), officerId });
}
