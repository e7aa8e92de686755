import 'server-only';
import { PASSWORD_LINK_MS } from '@/lib/people/password-link';
import { sealOf } from '../secret';

/**
 * Returns the path of a link for a new password. Nothing is stored: the seal holds the hash of the present password, so
 * that the link works once, and not after any other change of it.
 */
export function passwordLinkPath(userId: string, hash: string, now: Date): `/new-password/${string}` {
  const said = `${userId}.${now.getTime() + PASSWORD_LINK_MS}`;
  return `/new-password/${said}.${sealOfLink(said, hash)}`;
}

/** The seal of what a link says, under the hash of the password it is to replace. */
export function sealOfLink(said: string, hash: string): string {
  return sealOf('new-passwords', `${said} ${hash}`);
}
