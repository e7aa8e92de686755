import type { Content } from '@/lib/content/model';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import type { JsonValue } from './canonical-json';
import { fingerprint } from './fingerprint';

const DEFAULT_MATRIX = 'five-by-five';

/**
 * SHA-256 over the parts of a document that decide its numbers, 64 hexadecimal digits. Title, notes, reasons
 * and the order in which things are written change nothing; neither does writing out a default. What was not
 * answered and what was answered with nothing ticked stay apart.
 * @param content the edition that is used, whether the document names it or not
 */
export function inputHash(document: AssessmentDocument, content: Content): string {
  return fingerprint({
    contentVersion: content.version,
    answers: Object.fromEntries(Object.entries(document.answers).map(([id, answer]) => [id, inOneOrder(answer)])),
    notSureTicks: ticksInOneOrder(document.notSureTicks ?? {}),
    exposures: { ...document.exposures },
    inputs: { ...document.inputs },
    states: { ...document.states },
    record: Object.fromEntries(Object.entries(document.record ?? {}).map(([id, seen]) => [id, { ...seen }])),
    planned: [...(document.planned ?? [])].sort(),
    effortBudget: document.effortBudget ?? content.defaultEffortBudget,
    matrix: matrixParts(document.matrix),
  });
}

/** @returns seed of the random stream: the first 32 bits of a fingerprint, 0 to 4,294,967,295 */
export function seedFromHash(hash: string): number {
  const seed = Number.parseInt(hash.slice(0, 8), 16);
  if (!Number.isInteger(seed)) throw new Error(`"${hash}" is not a fingerprint`);
  return seed;
}

function inOneOrder(answer: Answer): JsonValue {
  if (typeof answer === 'string') return answer;
  return isList(answer) ? [...answer].sort() : { ...answer };
}

function ticksInOneOrder(ticks: Readonly<Record<string, readonly string[]>>): JsonValue {
  return Object.fromEntries(Object.entries(ticks).filter(([, ids]) => ids.length > 0).map(([id, ids]) => [id, [...ids].sort()]));
}

function matrixParts(matrix: AssessmentDocument['matrix']): JsonValue {
  if (matrix === undefined || typeof matrix === 'string') return matrix ?? DEFAULT_MATRIX;
  return { title: matrix.title, from: matrix.from, words: matrix.words, cells: matrix.cells };
}

function isList(answer: Answer): answer is readonly string[] {
  return Array.isArray(answer);
}
