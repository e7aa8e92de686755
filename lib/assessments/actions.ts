import { type Decision, no, yes } from './standing';

export const ACTION_STATES = ['open', 'done', 'dropped'] as const;
export type ActionState = (typeof ACTION_STATES)[number];

/** Returns whether a word, of a database, is a state of an action. */
export function isActionState(word: string): word is ActionState { return ACTION_STATES.some((state) => state === word); }

/** Something that is to be done, by somebody, by a day. */
export interface ActionRecord {
  readonly id: string;
  readonly versionId: string | null;
  /** what it was made out of: the control it puts in place, the stop it settles */
  readonly controlId: string | null;
  readonly stopId: string | null;
  /** the assessment or the incident it belongs to, in words */
  readonly of: string;
  readonly title: string;
  readonly details: string;
  /** null: somebody without an account */
  readonly ownerId: string | null;
  readonly ownerName: string;
  /** calendar day, YYYY-MM-DD */
  readonly dueOn: string;
  readonly state: ActionState;
  readonly createdAt: Date;
  readonly closedAt: Date | null;
  readonly closedByName: string;
  readonly closedNote: string;
  readonly revision: number;
}

/** Whether it should have been done by now. Its day still counts. */
export function isOverdue({ state, dueOn }: Pick<ActionRecord, 'state' | 'dueOn'>, today: string): boolean { return state === 'open' && dueOn < today; }

/** Done, with what was done; or dropped, with why: nothing goes away without a word. */
export function closeAction(state: ActionState, to: 'done' | 'dropped', note: string): Decision<{ readonly state: 'done' | 'dropped'; readonly note: string }> {
  if (state !== 'open') return no(`It is ${state} already.`);
  if (note.trim() === '') return no(to === 'done' ? 'Write what was done, so that somebody else can look at it.' : 'Write why it is dropped.');
  return yes({ state: to, note: note.trim() });
}

/** Open again, with why. What was written when it was closed stays in the log. */
export function openAgain(state: ActionState, reason: string): Decision<{ readonly state: 'open' }> {
  if (state === 'open') return no('It is open.');
  return reason.trim() === '' ? no('Write why it is open again.') : yes({ state: 'open' });
}

/** Only what is open is changed: a closed action says what was agreed when it was closed. */
export function mayChange(state: ActionState): Decision<true> { return state === 'open' ? yes(true) : no(`It is ${state}. Open it again first.`); }

/** Open ones first, the earliest first; then what is closed, the latest first. */
export function inOrder(actions: readonly ActionRecord[]): readonly ActionRecord[] {
  const closed = (action: ActionRecord): number => action.closedAt?.getTime() ?? 0;
  return [...actions].sort((one, other) => {
    if ((one.state === 'open') !== (other.state === 'open')) return one.state === 'open' ? -1 : 1;
    return one.state === 'open' ? one.dueOn.localeCompare(other.dueOn) || one.id.localeCompare(other.id) : closed(other) - closed(one);
  });
}

export const SHOWN_ACTIONS = ['open', 'overdue', 'done', 'dropped', 'all'] as const;
export type ShownActions = (typeof SHOWN_ACTIONS)[number];

/** The actions that a search and a filter leave; every word of the search has to stand somewhere in the row. */
export function narrowedActions(actions: readonly ActionRecord[], { q, state }: { readonly q: string; readonly state: ShownActions }, today: string): readonly ActionRecord[] {
  const words = q.toLowerCase().split(/\s+/u).filter((word) => word !== '');
  const shown = (action: ActionRecord): boolean => state === 'all' || (state === 'overdue' ? isOverdue(action, today) : action.state === state);
  const found = ({ title, details, ownerName, of }: ActionRecord): boolean => words.every((word) => [title, details, ownerName, of].some((text) => text.toLowerCase().includes(word)));
  return inOrder(actions.filter((action) => shown(action) && found(action)));
}
