import { describe, expect, it } from 'vitest';
import { rankReason } from '@/lib/wording/rank-reason';
import type { BranchResult, GradeOrNone, RiskResult } from '@/lib/core/result';

const weights = { 1: 1, 2: 10, 3: 100, 4: 1000, 5: 10000 };
const end = (id: string, harm: number, severity: 2 | 3, expectedWeight: number): BranchResult => ({ id, harm, severity, expectedWeight }) as BranchResult;
const risk = (rank: number, grade: GradeOrNone, branches: readonly BranchResult[]): RiskResult =>
  ({ id: `r${rank}`, rank, grade, branches, decidedBy: 'a', harmMean: branches.reduce((sum, branch) => sum + branch.harm, 0) }) as RiskResult;

describe('why a risk stands above one with a worse grade', () => {
  const graver = risk(2, 'high', [end('a', 1, 3, 100)]);

  it('says nothing when grades and order agree', () => {
    expect(rankReason(risk(1, 'high', [end('a', 5, 3, 100)]), [graver], weights)).toBeNull();
    expect(rankReason(risk(3, 'low', [end('a', 0.1, 2, 10)]), [graver], weights)).toBeNull();
  });

  it('names the other ends when these carry the harm', () => {
    expect(rankReason(risk(1, 'moderate', [end('a', 1, 3, 100), end('b', 9, 2, 10)]), [graver], weights)).toContain('adds up all its ends');
  });

  it('names fierce fires when the weight is more than that of the middle', () => {
    expect(rankReason(risk(1, 'moderate', [end('a', 9, 2, 40)]), [graver], weights)).toContain('fierce fires');
  });

  it('names the width of the bands when nothing else explains it', () => {
    expect(rankReason(risk(1, 'moderate', [end('a', 9, 2, 10)]), [graver, risk(3, 'extreme', [])], weights)).toBe('Ranked by harm, how often × how bad, so it stands above 2 risks with a worse grade: one step of the grade spans ten times in how often.');
  });
});
