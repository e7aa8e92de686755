import 'server-only';
import { sealOf } from '../secret';

/** Returns the secret of a caretaker's link: a keyed seal of its id, 256 bits, made anew whenever the link is shown. */
export function caretakerToken(linkId: string): string {
  return sealOf('caretaker-links', `link ${linkId}`);
}

/** Returns what is stored of the secret, and what the link is found by. */
export function sealOfCaretakerToken(token: string): string {
  return sealOf('caretaker-links', `seal ${token}`);
}
