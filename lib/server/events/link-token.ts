import 'server-only';
import { sealOf } from '../secret';

/** Returns the secret of an event's link: a keyed seal of its id, 256 bits, made anew whenever the link is shown. */
export function linkToken(linkId: string): string {
  return sealOf('event-links', `link ${linkId}`);
}

/** Returns what is stored of the secret, and what the link is found by. */
export function sealOfToken(token: string): string {
  return sealOf('event-links', `seal ${token}`);
}
