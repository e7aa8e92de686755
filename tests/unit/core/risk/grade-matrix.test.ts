import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { MatrixChoice } from '@/lib/core/document';
import { cellGrade, GRADES, gradeMatrix, levelOf } from '@/lib/core/risk/grade-matrix';
import { scoreReference } from '../../../support/reference-venues';

const CHOICES: readonly MatrixChoice[] = ['five-by-five', 'mil-std-882e', 'three-by-three', {
  title: 'Ours', from: [0, 0.02, 0.5], words: ['seldom', 'now and then', 'often'],
  cells: [['low', 'low', 'low', 'moderate', 'high'], ['low', 'low', 'moderate', 'high', 'high'], ['low', 'moderate', 'high', 'extreme', 'extreme']],
}];

describe('the 5 × 5 matrix', () => {
  const matrix = gradeMatrix(edition1, undefined);

  it('has the published grade of every score', () => {
    // CK-19, NHS/NPSA "A risk matrix for risk managers" 2008: products and band 1 to 3 read in a copy
    // (READ-C), the other bands from memory (MEM, H)
    const published: Readonly<Record<number, string>> = { 3: 'low', 4: 'moderate', 6: 'moderate', 8: 'high', 12: 'high', 15: 'extreme', 25: 'extreme', 1: 'low' };
    for (const [score, grade] of Object.entries(published)) {
      const cells = matrix.scores.flatMap((row, level) => row.flatMap((value, severity) => (value === Number(score) ? [cellGrade(matrix, level + 1, severity + 1)] : [])));
      expect(cells.length).toBeGreaterThan(0);
      expect(new Set(cells)).toEqual(new Set([grade]));
    }
  });

  it('has as many cells of each grade as the published bands give', () => {
    // REFERENCES D.2, computed: low 5, moderate 7, high 7, extreme 6
    const counts = Object.fromEntries(GRADES.map((grade) => [grade, matrix.cells.flat().filter((cell) => cell === grade).length]));
    expect(counts).toEqual({ low: 5, moderate: 7, high: 7, extreme: 6 });
  });

  it('gives a frequency on a bound to the band above', () => {
    expect([0, 0.000999, 0.001, 0.01, 0.1, 1, 50].map((frequency) => levelOf(matrix, frequency))).toEqual([1, 1, 2, 3, 4, 5, 5]);
  });
});

describe.each(CHOICES)('matrix %#', (choice) => {
  const matrix = gradeMatrix(edition1, choice);

  it('never falls with likelihood or severity', () => {
    matrix.cells.forEach((row, level) => row.forEach((grade, severity) => {
      const here = GRADES.indexOf(grade);
      expect(here).toBeGreaterThanOrEqual(GRADES.indexOf(matrix.cells[level - 1]?.[severity] ?? 'low'));
      expect(here).toBeGreaterThanOrEqual(GRADES.indexOf(row[severity - 1] ?? 'low'));
    }));
  });

  it('has bands without a gap, and a cell for every class', () => {
    matrix.levels.forEach((level, index) => expect(level.to).toBe(matrix.levels[index + 1]?.from ?? null));
    expect(matrix.levels[0]?.from).toBe(0);
    expect(matrix.cells.every((row) => row.length === 5)).toBe(true);
  });

  it('changes grades and nothing else of a score', () => {
    const here = scoreReference('ordinary-classroom', 300, { matrix: choice });
    const usual = scoreReference('ordinary-classroom', 300);
    expect(here.totalHarm).toBe(usual.totalHarm);
    expect(here.risks.map((risk) => [risk.id, risk.harm.p95])).toEqual(usual.risks.map((risk) => [risk.id, risk.harm.p95]));
    for (const risk of here.risks) {
      const cells = risk.branches.filter((branch) => branch.level > 0).map((branch) => cellGrade(matrix, branch.level, branch.severity));
      if (cells.length > 0) expect(risk.grade).toBe(GRADES[Math.max(...cells.map((grade) => GRADES.indexOf(grade)))]);
    }
  });
});
