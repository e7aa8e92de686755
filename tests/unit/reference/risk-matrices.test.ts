import { describe, expect, it } from 'vitest';
import { MIL_STD_882E, MIL_STD_TABLE_III, type TableMatrix, THREE_BY_THREE } from '@/lib/reference/risk-matrices';

const GRADES = ['low', 'moderate', 'high', 'extreme'];

describe('MIL_STD_TABLE_III', () => {
  // CK-18: MIL-STD-882E Table III (READ-S), the six cells it names
  it('gives the cells 2C, 1D, 3B, 2D, 1E and 4D as published', () => {
    const { A, B, C, D, E } = MIL_STD_TABLE_III;
    expect([C[1], D[0], B[2], D[1], E[0], D[3]]).toEqual(['Serious', 'Serious', 'Serious', 'Medium', 'Medium', 'Low']);
    expect(A[0]).toBe('High');
  });
  it('has 24 cells: 5 high, 4 serious, 8 medium, 3 low, 4 eliminated', () => {
    const cells: readonly string[] = Object.values(MIL_STD_TABLE_III).flat();
    const count = (word: string): number => cells.filter((cell) => cell === word).length;
    expect([cells.length, ...['High', 'Serious', 'Medium', 'Low', 'Eliminated'].map(count)]).toEqual([24, 5, 4, 8, 3, 4]);
  });
});

describe.each([MIL_STD_882E, THREE_BY_THREE])('the matrix $id', (matrix: TableMatrix) => {
  const rank = (grade: string | undefined): number => GRADES.indexOf(grade ?? '');
  it('has a row for each likelihood level and a column for each severity class', () => {
    expect(matrix.cells.map((row) => row.length)).toEqual(matrix.levels.map(() => 5));
  });
  it('has bands without gaps from zero upwards', () => {
    expect(matrix.levels[0]?.from).toBe(0);
    matrix.levels.forEach(({ to }, index) => expect(to).toBe(matrix.levels[index + 1]?.from ?? null));
  });
  it('never grades lower for more likelihood or more severity (amendment A32)', () => {
    matrix.cells.forEach((row, level) => row.forEach((grade, column) => {
      expect(rank(grade)).toBeGreaterThanOrEqual(0);
      expect(rank(row[column + 1] ?? 'extreme')).toBeGreaterThanOrEqual(rank(grade));
      expect(rank(matrix.cells[level + 1]?.[column] ?? 'extreme')).toBeGreaterThanOrEqual(rank(grade));
    }));
  });
});
