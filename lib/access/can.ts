import { isRole, ROLES } from './roles';
import { isAction, TABLE, type Action, type ActionOfRole, type ActionOnCase, type Rule } from './table';

/** Who wants to act, and what on. */
export interface Case {
  readonly actor: { readonly schoolId: string; readonly personId: string };
  /** `byId`: who prepared it or made it, or is to do it; null when that is nobody with an account */
  readonly on: { readonly schoolId: string; readonly byId: string | null };
}

/**
 * Returns whether somebody of this role may do this. Where the table asks whose the thing is, the case has to be
 * given; where a case is given, it must be of the actor's own school. An unknown role or action is refused.
 */
export function can(role: string, action: ActionOfRole, about?: Case): boolean;
export function can(role: string, action: ActionOnCase, about: Case): boolean;
export function can(role: string, action: Action, about?: Case): boolean {
  if (about !== undefined && about.on.schoolId !== about.actor.schoolId) return false;
  const rule = ruleOf(role, action);
  if (rule === 'yes') return true;
  if (rule === 'no' || about === undefined || about.on.byId === null) return false;
  return (about.on.byId === about.actor.personId) === (rule === 'own');
}

/**
 * Returns whether there is any case in which this role may do this: enough to offer it or to let somebody in at the
 * door, never enough to do it.
 */
export function mayEver(role: string, action: Action): boolean {
  return ruleOf(role, action) !== 'no';
}

function ruleOf(role: string, action: string): Rule {
  if (!isRole(role) || !isAction(action)) return 'no';
  return TABLE[action][ROLES.indexOf(role)] ?? 'no';
}
