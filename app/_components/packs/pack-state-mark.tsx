import { stateWords, type PackState } from '@/lib/packs/states/pack-states';

/** Square family: drawn once a page by `PackStateShapes`. */
const SHAPES: Readonly<Record<PackState, string>> = { 'in-use': 's-in-use', watch: 's-watch', isolated: 's-isolated', retired: 's-retired', 'handed-over': 's-handed-over' };

interface PackStateMarkProps {
  readonly state: PackState;
  /** a person has to act: then, and only then, it is ember */
  readonly presses?: boolean;
  /** instead of the state's own words */
  readonly words?: string;
}

/** A pack's state: its mark and the word beside it. */
export function PackStateMark({ state, presses = false, words = stateWords(state) }: PackStateMarkProps) {
  return (
    <span className={`state ${state}${presses ? ' now' : ''}`}>
      <svg aria-hidden="true" focusable="false"><use href={`#${SHAPES[state]}`} /></svg>
      {words}
    </span>
  );
}

const FRAME = 'M2.5 2.5h11v11h-11z';

/** The five shapes, in the page once: in a square, half, boxed by corners, struck, open with an arrow. */
export function PackStateShapes() {
  return (
    <svg className="sprite" width="0" height="0" aria-hidden="true" focusable="false">
      <symbol id="s-in-use" viewBox="0 0 16 16"><path d={FRAME} fill="none" stroke="currentColor" strokeWidth="2" /><path d="M5.5 5.5h5v5h-5z" fill="currentColor" /></symbol>
      <symbol id="s-watch" viewBox="0 0 16 16"><path d={FRAME} fill="none" stroke="currentColor" strokeWidth="2" /><path d="M2.5 13.5v-11l11 11z" fill="currentColor" /></symbol>
      <symbol id="s-isolated" viewBox="0 0 16 16"><path d="M1 5V1h4M11 1h4v4M15 11v4h-4M5 15H1v-4" fill="none" stroke="currentColor" strokeWidth="2" /><path d="M4.5 4.5h7v7h-7z" fill="currentColor" /></symbol>
      <symbol id="s-retired" viewBox="0 0 16 16"><path d="M2.5 2.5h11v11h-11zM2.5 13.5l11-11" fill="none" stroke="currentColor" strokeWidth="2" /></symbol>
      <symbol id="s-handed-over" viewBox="0 0 16 16"><path d="M9 2.5H2.5v11H9M6 8h8M11 4.8 14.2 8 11 11.2" fill="none" stroke="currentColor" strokeWidth="2" /></symbol>
    </svg>
  );
}
