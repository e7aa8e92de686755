import 'server-only';
import { contentByVersion, editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import { documentOf, type VersionRecord } from '@/lib/assessments/version';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';
import { score } from '@/lib/core/score';
import { inputHash, seedFromHash } from '@/lib/interchange/input-hash';

/** Draws that a signed result rests on: quick to repeat, and enough for shares and ranges. */
const DRAWS = 4000;
/** Results that are kept at hand. The same input gives the same result, so none of them can be out of date. */
const KEPT = 12;

export interface Scored { readonly content: Content; readonly edition: number; readonly document: AssessmentDocument; readonly result: ScoreResult }

const atHand = new Map<string, ScoreResult>();

/** The result of a version as it stands, with the open actions as planned; the same whenever it is asked for. */
export function scoreVersion(version: VersionRecord, planned: readonly string[]): Scored {
  const content = contentOf(version.contentVersion);
  const document = documentOf(version, planned);
  return { content, edition: editionOf(content), document, result: resultOf(content, document) };
}

/** The edition of a version. @throws when this program does not have it: then it is older than its database */
export function contentOf(contentVersion: string): Content {
  const content = contentByVersion(contentVersion);
  if (content === undefined) throw new Error(`there is no edition ${contentVersion} of the content`);
  return content;
}

export function editionOf(content: Content): number { return editions.find((one) => one.content === content)?.edition ?? 0; }

function resultOf(content: Content, document: AssessmentDocument): ScoreResult {
  const hash = inputHash(document, content);
  const known = atHand.get(hash);
  const result = known ?? score(content, document, { seed: seedFromHash(hash), draws: DRAWS, inputHash: hash });
  atHand.delete(hash);
  atHand.set(hash, result);
  const [oldest] = atHand.keys();
  if (atHand.size > KEPT && oldest !== undefined) atHand.delete(oldest);
  return result;
}
