import type { Content, ControlState, InputValue } from '@/lib/content/model';
import type { AssumedInput } from '@/lib/core/result';

/** A venue as the calculation sees it: every input has a value, every control a state, every exposure a figure. */
export interface Venue {
  readonly content: Content;
  readonly inputs: ReadonlyMap<string, InputValue>;
  readonly states: ReadonlyMap<string, ControlState>;
  readonly exposures: ReadonlyMap<string, number>;
  /** exposures that the document gives as counted; they stand whatever the inputs say */
  readonly countedExposures: Readonly<Record<string, number>>;
  /** ids of the questions that applied */
  readonly shown: ReadonlySet<string>;
  readonly assumedInputs: readonly AssumedInput[];
}

/** @throws when the venue has no such number: a fault of the content or of our code, never of an answer */
export function numberInput(venue: Venue, id: string): number {
  const value = venue.inputs.get(id);
  if (typeof value !== 'number') throw new Error(`input ${id} is not a number`);
  return value;
}

/** @throws when the venue has no such word */
export function wordInput(venue: Venue, id: string): string {
  const value = venue.inputs.get(id);
  if (typeof value !== 'string') throw new Error(`input ${id} is not a word`);
  return value;
}

/** Exposure of a base in its own unit per season. @throws when the content has no such base */
export function exposureOf(venue: Venue, base: string): number {
  const exposure = venue.exposures.get(base);
  if (exposure === undefined) throw new Error(`no exposure ${base}`);
  return exposure;
}

/** @throws when the content has no such control */
export function stateOf(venue: Venue, control: string): ControlState {
  const state = venue.states.get(control);
  if (state === undefined) throw new Error(`control ${control} has no state`);
  return state;
}

/** The same venue with the states of some controls changed; inputs and exposures stay. */
export function withStates(venue: Venue, changes: ReadonlyMap<string, ControlState>): Venue {
  return { ...venue, states: new Map([...venue.states, ...changes]) };
}
