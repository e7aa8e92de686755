import 'server-only';
import { headers } from 'next/headers';

/**
 * Returns the whole address of a page of ours, to be passed on. Host and scheme are those under which the person who
 * asks reached us: the links they hand out work for others the same way.
 */
export async function publicAddress(path: `/${string}`): Promise<string> {
  const sent = await headers();
  const scheme = sent.get('x-forwarded-proto') ?? 'http';
  const host = sent.get('x-forwarded-host') ?? sent.get('host') ?? 'localhost';
  return new URL(path, `${scheme === 'https' ? 'https' : 'http'}://${host}`).href;
}
