import type { Grade, GradeOrNone } from '@/lib/core/result';

const WORDS: Readonly<Record<GradeOrNone, string>> = {
  low: 'Low',
  moderate: 'Moderate',
  high: 'High',
  extreme: 'Extreme',
  'not applicable': 'Does not apply',
};

/** What a grade asks of the school: the rule that goes with the word (common practice, no source). */
const RULES: Readonly<Record<Grade, string>> = {
  low: 'Keep what holds it.',
  moderate: 'Act this term.',
  high: 'The officer’s consent and a date.',
  extreme: 'Do not start.',
};

/**
 * A grade as a word with a capital.
 * @param own the matrix's own word for it, when it has one; a risk that does not apply has none
 */
export function gradeWord(grade: GradeOrNone, own?: string): string {
  if (own === undefined || grade === 'not applicable') return WORDS[grade];
  return own.charAt(0).toUpperCase() + own.slice(1);
}

/** What a grade asks of the school, in one short sentence. */
export function gradeRule(grade: Grade): string { return RULES[grade]; }
