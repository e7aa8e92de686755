const WORDS = {
  draft: 'draft',
  'with-officer': 'with the officer',
  returned: 'returned',
  signed: 'signed',
  superseded: 'superseded',
  withdrawn: 'withdrawn',
} as const;

/** The state of an assessment as it is written for people. */
export function assessmentStateWords(state: keyof typeof WORDS): string { return WORDS[state]; }
