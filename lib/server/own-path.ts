/** Only used to read an address; nothing is ever sent there. */
const ANY_ORIGIN = 'http://own.invalid';

/**
 * Returns the path and query of an address inside this program, or `otherwise` when it is not one: another host, a
 * scheme, `//host`, `/\host`, control signs. What comes back is safe to redirect to.
 */
export function ownPath(given: string | null | undefined, otherwise: `/${string}` = '/today'): `/${string}` {
  if (!given?.startsWith('/') || !URL.canParse(given, ANY_ORIGIN)) return otherwise;
  const url = new URL(given, ANY_ORIGIN);
  return url.origin === ANY_ORIGIN && !url.pathname.startsWith('//') ? (`${url.pathname}${url.search}` as `/${string}`) : otherwise;
}
