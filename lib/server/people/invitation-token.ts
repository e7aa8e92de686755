import 'server-only';
import { sealOf } from '../secret';

/**
 * Returns the secret of an invitation's link: a keyed seal of its id, 256 bits. Made anew whenever an officer looks at
 * the open links, so it is stored nowhere.
 */
export function tokenOf(invitationId: string): string {
  return sealOf('invitations', `link ${invitationId}`);
}

/** Returns what is stored of a link's secret, and what it is found by. */
export function sealOfToken(token: string): string {
  return sealOf('invitations', `seal ${token}`);
}
