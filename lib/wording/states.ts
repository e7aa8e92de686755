import type { ControlState } from '@/lib/content/model';

const WORDS: Readonly<Record<ControlState, string>> = {
  'in place': 'in place',
  partly: 'partly',
  absent: 'absent',
  'not sure': 'not sure',
  'not applicable': 'does not apply',
};

/** The state of a control, as it stands inside a sentence. */
export function stateWord(state: ControlState): string { return WORDS[state]; }
