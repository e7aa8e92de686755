import { NextResponse, type NextRequest } from 'next/server';
import { contentSecurityPolicy } from '@/lib/server/content-security-policy';
import { env } from '@/lib/server/env';
import { forwardedHeaders } from '@/lib/server/forwarded-headers';

/**
 * Gives every page its own Content-Security-Policy. Next reads the nonce out of the request's header and puts it on
 * its scripts, which it can only do for pages rendered per request: the root layout must not be static.
 */
export function proxy(request: NextRequest): NextResponse {
  const nonce = btoa(crypto.randomUUID());
  const policy = contentSecurityPolicy(nonce, env.isDevelopment);
  const headers = forwardedHeaders(request.headers, `${request.nextUrl.pathname}${request.nextUrl.search}`);
  headers.set('x-nonce', nonce);
  headers.set('Content-Security-Policy', policy);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('Content-Security-Policy', policy);
  return response;
}

export const config = {
  matcher: [
    {
      source: '/((?!api/|_next/static/|_next/image|favicon.ico).*)',
      missing: [
        { type: 'header', key: 'next-router-prefetch' },
        { type: 'header', key: 'purpose', value: 'prefetch' },
      ],
    },
  ],
};
