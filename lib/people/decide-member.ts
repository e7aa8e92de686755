import type { Role } from '@/lib/access/roles';

/** Somebody of the school, now or earlier. */
export interface MemberState {
  readonly personId: string;
  readonly role: Role;
  /** false since the account was closed */
  readonly isActive: boolean;
}

export type MemberChange =
  | { readonly kind: 'role'; readonly personId: string; readonly role: Role }
  | { readonly kind: 'close'; readonly personId: string }
  | { readonly kind: 'reopen'; readonly personId: string };

export type MemberDecision =
  | { readonly ok: true; readonly before: MemberState }
  | { readonly ok: false; readonly reason: string };

const LAST_OFFICER = 'This is the only safety officer. Make somebody else one first: without an officer nobody can sign, invite or change roles';

/**
 * Returns whether a change to a member may be made. At no time is a school without a safety officer who can sign in.
 * @param members everybody of the school
 */
export function decideMember(members: readonly MemberState[], change: MemberChange): MemberDecision {
  const before = members.find(({ personId }) => personId === change.personId);
  if (!before) return refuse('This person does not belong to your school');
  if (change.kind === 'reopen') return before.isActive ? refuse('This account is open already') : { ok: true, before };
  if (!before.isActive) return refuse('This account is closed. Open it again first');
  if (change.kind === 'role' && change.role === before.role) return refuse('This is the role they have already');
  const staysOfficer = change.kind === 'role' && change.role === 'safety-officer';
  if (isOfficer(before) && !staysOfficer && members.filter(isOfficer).length === 1) return refuse(LAST_OFFICER);
  return { ok: true, before };
}

function isOfficer(member: MemberState): boolean {
  return member.isActive && member.role === 'safety-officer';
}

function refuse(reason: string): MemberDecision {
  return { ok: false, reason };
}
