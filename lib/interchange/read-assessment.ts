import { currentContent } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';
import { type Assessment, AssessmentSchema } from './assessment-schema';
import { answerFaults, tickFaults } from './checks/answers';
import { editionFaults } from './checks/edition';
import { inputFaults } from './checks/inputs';
import { idFaults } from './checks/known-ids';
import { ownMatrixFaults } from './checks/matrix';
import type { DocumentRemark } from './checks/remark';
import { remarksOn } from './checks/remarks';
import { shapeFaults } from './checks/shape';
import { type DocumentFault, faultAt } from './json/fault';
import { readJson } from './json/read-json';
import { inputHash } from './input-hash';
import { toDocument } from './to-document';

/** More than anybody reads; the rest is counted. */
const MOST_FAULTS = 500;

export type AssessmentRead =
  | {
    readonly ok: true;
    /** what the calculation reads */
    readonly document: AssessmentDocument;
    /** everything that was written */
    readonly assessment: Assessment;
    /** the edition it was read with, whatever edition it was written for */
    readonly content: Content;
    readonly inputHash: string;
    readonly remarks: readonly DocumentRemark[];
  }
  | { readonly ok: false; readonly faults: readonly DocumentFault[] };

/**
 * Reads a `sandbucket-assessment.v1` document from text.
 * @param text JSON
 * @param content the edition to read it with. A document may name an older one: ids stay from edition to edition, and
 * what its questions did not ask counts as not answered, which a remark says
 * @returns the document, or every fault with its JSONPath and what would be right; nothing is half read
 */
export function readAssessment(text: string, content: Content = currentContent): AssessmentRead {
  const read = readJson(text);
  if (!read.readable) return { ok: false, faults: [read.fault] };
  const unread = editionFaults(read.value, content);
  const faults = [
    ...read.faults,
    ...shapeFaults(read.value),
    ...(unread.length > 0 ? unread : contentFaults(read.value, content)),
  ];
  const parsed = AssessmentSchema.safeParse(read.value);
  if (!parsed.success) return { ok: false, faults: inOrder(faults) };
  const all = [...faults, ...matrixFaults(parsed.data)];
  return all.length > 0 ? { ok: false, faults: inOrder(all) } : accepted(parsed.data, content);
}

function accepted(assessment: Assessment, content: Content): AssessmentRead {
  const document = toDocument(assessment);
  return { ok: true, document, assessment, content, inputHash: inputHash(document, content), remarks: remarksOn(assessment, content) };
}

function contentFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return [...answerFaults(value, content), ...tickFaults(value, content), ...inputFaults(value, content), ...idFaults(value, content)];
}

function matrixFaults({ matrix }: Assessment): readonly DocumentFault[] {
  return matrix === undefined || typeof matrix === 'string' ? [] : ownMatrixFaults(matrix);
}

/** One fault for each place: the first that was found there is the plainest. */
function inOrder(faults: readonly DocumentFault[]): readonly DocumentFault[] {
  const places = new Set<string>();
  const first = faults.filter(({ path }) => !places.has(path) && places.add(path));
  if (first.length <= MOST_FAULTS) return first;
  const more = faultAt([], `has ${first.length - MOST_FAULTS} more faults`, 'these put right first');
  return [...first.slice(0, MOST_FAULTS), more];
}
