/** One thing to choose, with what is said under it. */
export interface Choice<Id extends string = string> { readonly id: Id; readonly label: string; readonly hint?: string }

/** The ids of a list, for a schema. */
export function idsOf<const Id extends string>(choices: readonly Choice<Id>[]): readonly [Id, ...Id[]] {
  const [first, ...rest] = choices.map(({ id }) => id);
  if (first === undefined) throw new Error('a list of choices is empty');
  return [first, ...rest];
}

/** The words of a choice; of one that this program does not know, such as one of an older list, the id itself. */
export function labelOf(choices: readonly Choice[], id: string): string;
export function labelOf(choices: readonly Choice[], id: string | null): string | null;
export function labelOf(choices: readonly Choice[], id: string | null): string | null {
  return id === null ? null : (choices.find((choice) => choice.id === id)?.label ?? id);
}
