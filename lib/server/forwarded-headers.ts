/** Says which page is asked for; Next does not tell a page its own address. */
export const PATH_HEADER = 'x-sandbucket-path';

/** Whoever sends a request can write these, and Next keeps what was sent. Nothing in the program may believe them. */
const CLAIMED_ADDRESSES = ['x-forwarded-for', 'forwarded', 'x-real-ip', 'x-client-ip'];

/**
 * Returns a request's headers as the program gets to see them: without any that claim an address of the sender, and
 * with the path that is asked for, whatever was sent in its place. Host and scheme stay, since Next compares them with
 * the Origin of a form.
 */
export function forwardedHeaders(sent: Headers, path: string): Headers {
  const headers = new Headers(sent);
  CLAIMED_ADDRESSES.forEach((name) => headers.delete(name));
  headers.set(PATH_HEADER, path);
  return headers;
}
