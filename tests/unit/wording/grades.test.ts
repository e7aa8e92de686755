import { describe, expect, it } from 'vitest';
import { gradeRule, gradeWarning, gradeWord } from '@/lib/wording/grades';
import { severityWord } from '@/lib/wording/severity';

describe('grades in words', () => {
  it('take the school\'s own word where its matrix has one', () => {
    expect([gradeWord('extreme'), gradeWord('extreme', 'high'), gradeWord('not applicable', 'low')]).toEqual(['Extreme', 'High', 'Does not apply']);
  });

  it('never let a class that endangers life pass as low or moderate', () => {
    expect([gradeWarning('low', 5), gradeWarning('moderate', 5)]).toEqual(['could kill', 'could kill']);
    expect([gradeWarning('high', 5), gradeWarning('low', 4)]).toEqual([null, null]);
    expect(severityWord(5)).toBe('Could kill');
  });

  it('tell what each asks of the school', () => {
    expect(gradeRule('extreme')).toBe('Do not start.');
  });
});
