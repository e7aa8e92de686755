import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { quickScore } from '@/lib/core/quick-score';
import { score } from '@/lib/core/score';
import { type AssessmentRead, readAssessment } from '@/lib/interchange/read-assessment';
import { arbitraryAssessment } from '@/tests/support/arbitrary-assessment';
import { arbitraryDocumentOf } from '@/tests/support/arbitrary-document';

/** Every number in a result, with its place, that is not finite. */
function notFinite(value: unknown, place = '$'): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${place} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) => notFinite(inner, `${place}.${name}`));
}

const readAny = (document: unknown): AssessmentRead => readAssessment(JSON.stringify(document), edition2);

describe('a document of the second edition', () => {
  it('is accepted whatever its questions are answered', () => {
    fc.assert(fc.property(arbitraryDocumentOf(edition2), (document) => {
      const read = readAny({ format: 'sandbucket-assessment.v1', ...document });
      expect(read.ok ? [] : read.faults).toEqual([]);
    }), { numRuns: 100, endOnFailure: true });
  });

  it('that is accepted has finite closed values', () => {
    let accepted = 0;
    fc.assert(fc.property(arbitraryAssessment(edition2), (document) => {
      const read = readAny(document);
      if (!read.ok) return;
      accepted += 1;
      expect(notFinite(quickScore(edition2, read.document))).toEqual([]);
    }), { numRuns: 150, endOnFailure: true });
    expect(accepted, 'most of them must be accepted, or nothing was tried').toBeGreaterThan(75);
  });

  it('that is accepted has a result without a number that is not finite', () => {
    fc.assert(fc.property(arbitraryAssessment(edition2), (document) => {
      const read = readAny(document);
      if (read.ok) expect(notFinite(score(edition2, read.document, { seed: 1, draws: 100, inputHash: read.inputHash }))).toEqual([]);
    }), { numRuns: 12, endOnFailure: true });
  }, 120_000);
});
