import { describe, expect, it } from 'vitest';
import { gradeRule, gradeWord } from '@/lib/wording/grades';
import { severityWord } from '@/lib/wording/severity';

describe('grades in words', () => {
  it('take the school\'s own word where its matrix has one', () => {
    expect([gradeWord('extreme'), gradeWord('extreme', 'high'), gradeWord('not applicable', 'low')]).toEqual(['Extreme', 'High', 'Does not apply']);
  });

  it('name the class that endangers life as what it is', () => {
    expect(severityWord(5)).toBe('Could kill');
  });

  it('tell what each asks of the school', () => {
    expect(gradeRule('extreme')).toBe('Do not start.');
  });
});
