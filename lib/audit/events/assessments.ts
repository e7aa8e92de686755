import { z } from 'zod';
import { changes, count, day, id, moment, none, sha256, words } from './parts';

/** As the document holds it; null when there is none. */
const value = z.json();
const reason = z.strictObject({ reason: words });
const part = z.enum(['preparer', 'officer']);

/** Of one version of an assessment; the subject is always the version, or the action. */
export const ASSESSMENT_EVENTS = {
  'assessment.begun': z.strictObject({ title: words, number: count, contentVersion: words, basedOnId: id.nullable() }),
  'assessment.changed': z.strictObject({ changes }),
  'answer.saved': z.strictObject({
    questionId: id, from: value, to: value, noteFrom: words.nullable(), noteTo: words.nullable(), origin: words, revision: count,
  }),
  'answer.waits': z.strictObject({ questionId: id, waitsFor: words }),
  'evidence.added': z.strictObject({ questionId: id, fileId: id, sha256 }),
  'evidence.removed': z.strictObject({ questionId: id, fileId: id }),
  'comment.added': z.strictObject({ commentId: id, questionId: id.nullable(), riskId: id.nullable(), text: words }),
  'comment.settled': z.strictObject({ commentId: id }),
  'comment.withdrawn': z.strictObject({ commentId: id }),
  'questions.sent': z.strictObject({ linkId: id, forWhom: words, questionIds: z.array(id), expiresAt: moment }),
  'questions.answered': z.strictObject({ linkId: id, questionIds: z.array(id) }),
  'questions.revoked': z.strictObject({ linkId: id }),
  'score.kept': z.strictObject({ scoreId: id, inputHash: words, engineVersion: words, contentVersion: words, seed: count, draws: count, resultHash: words }),

  'assessment.submitted': z.strictObject({ openStops: z.array(id) }),
  'assessment.taken-back': none,
  'assessment.returned': reason,
  'assessment.signed': z.strictObject({ part, documentId: id, certificateFingerprint: sha256, sha256 }),
  'assessment.superseded': z.strictObject({ byVersionId: id }),
  'assessment.suspended': reason,
  'assessment.suspension-lifted': reason,
  'assessment.withdrawn': reason,
  'stop.accepted': z.strictObject({ stopId: id, reason: words, replacement: words, endsOn: day, paper: words.nullable() }),
  'stop.acceptance-withdrawn': z.strictObject({ stopId: id, reason: words }),
  'review.asked': z.strictObject({ cause: words, reason: words, incidentId: id.nullable() }),
  'review.settled': z.strictObject({ requestId: id, how: words }),

  'action.added': z.strictObject({ title: words, owner: words, dueOn: day, controlId: id.nullable(), stopId: id.nullable(), incidentId: id.nullable() }),
  'action.changed': z.strictObject({ changes }),
  'action.closed': z.strictObject({ state: z.enum(['done', 'dropped']), note: words }),
  'action.opened-again': reason,
  'action.evidence-added': z.strictObject({ fileId: id, sha256 }),
};
