declare const scoped: unique symbol;

/** Id of the school that whoever asks belongs to. Only `schoolScope` makes one. */
export type SchoolId = string & { readonly [scoped]: true };

/** The part of every filter and every new row that keeps schools apart. */
export interface SchoolScope { readonly schoolId: SchoolId }

/**
 * Returns the scope of somebody who acts in a school. Every repository takes a scope and spreads it into each filter
 * and each row, so that a query without one does not compile; the composite foreign keys refuse what slips through.
 */
export function schoolScope(actor: { readonly schoolId: string }): SchoolScope {
  if (actor.schoolId === '') throw new Error('Somebody without a school has no scope');
  // The one place where an id becomes a scope.
  return { schoolId: actor.schoolId as SchoolId };
}

/** Returns the filter for one row of the school by its id; the row of another school is not found. */
export function rowOf(scope: SchoolScope, id: string): { readonly schoolId_id: { readonly schoolId: SchoolId; readonly id: string } } {
  return { schoolId_id: { schoolId: scope.schoolId, id } };
}
