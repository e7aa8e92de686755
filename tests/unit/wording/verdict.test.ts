import { describe, expect, it } from 'vitest';
import { verdictOf } from '@/lib/wording/verdict';
import type { GradeOrNone } from '@/lib/core/result';

const risks = (...grades: GradeOrNone[]) => grades.map((grade) => ({ grade }));

describe('the verdict', () => {
  it('puts a stop before any grade', () => {
    expect(verdictOf({ stops: [{}], risks: risks('low'), deadly: 0 })).toEqual({ sentence: 'Do not start. One condition stops it.', why: 'One risk grades low.', presses: true });
    expect(verdictOf({ stops: [{}, {}], risks: risks('extreme', 'low'), deadly: 1 }).why).toBe('One risk grades extreme. One has an end that could kill.');
  });

  it('forbids an extreme risk without any stop', () => {
    expect(verdictOf({ stops: [], risks: risks('extreme', 'extreme', 'high'), deadly: null })).toMatchObject({ sentence: 'Do not start. Two risks are extreme.', presses: true });
  });

  it('asks for consent when the worst is high, and never says that all is well', () => {
    expect(verdictOf({ stops: [], risks: risks('high', 'moderate'), deadly: 2 }).sentence).toBe('No stop condition holds. One risk grades high.');
    expect(verdictOf({ stops: [], risks: risks('high'), deadly: 2 }).why).toContain('consent');
    expect(verdictOf({ stops: [], risks: risks('low', 'not applicable'), deadly: 0 })).toMatchObject({ sentence: 'No stop condition holds, and no risk grades high.', presses: false });
  });

  it('says so when nothing is exposed at all, which is not the same as low', () => {
    expect(verdictOf({ stops: [], risks: risks('not applicable'), deadly: 0 }).why).toBe('Nothing here is exposed to any of the risks.');
  });
});
