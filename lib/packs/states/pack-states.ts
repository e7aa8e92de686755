/** States of a pack in the register. `handed-over` is the end: it has left. */
export const PACK_STATES = ['in-use', 'watch', 'isolated', 'retired', 'handed-over'] as const;
export type PackState = (typeof PACK_STATES)[number];

const WORDS: Readonly<Record<PackState, string>> = {
  'in-use': 'in use',
  watch: 'watch',
  isolated: 'isolated',
  retired: 'retired',
  'handed-over': 'handed over',
};

/** A state as it is written for people. */
export function stateWords(state: PackState): string {
  return WORDS[state];
}

export function isPackState(text: string): text is PackState {
  return Object.hasOwn(WORDS, text);
}

/** Whether a pack is still with the school; one that was handed over is not. */
export function isHere(state: PackState): boolean {
  return state !== 'handed-over';
}
