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

/** What an absent control would do is said as such, so that its bar is never read as protection that is there. */
export function stateInKey(state: ControlState): string {
  return state === 'absent' ? 'absent, would take away' : WORDS[state];
}
