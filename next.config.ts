import type { NextConfig } from 'next';

const nextConfig: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  // forbidden() answers 403 with app/forbidden.tsx. Without it the same call ends in an error, so nothing opens.
  experimental: {
    authInterrupts: true,
    // A signed paper that is handed in to be checked, or a photo before it is made smaller.
    serverActions: { bodySizeLimit: '25mb' },
    // Next cuts what comes through the proxy at 10 MB, and the action would then read half a form.
    proxyClientMaxBodySize: '25mb',
  },
  // Types are a step of their own (`npm run types`). Checking them again here would make everyone who only starts the
  // program wait for the types of the tests, and fail on them.
  typescript: { ignoreBuildErrors: true },
  // Without this Next takes a lock file in a parent folder for the root of a larger project.
  turbopack: { root: import.meta.dirname },
  headers: () =>
    Promise.resolve([
      {
        source: '/:path*',
        headers: [
          { key: 'X-Content-Type-Options', value: 'nosniff' },
          { key: 'Referrer-Policy', value: 'same-origin' },
          { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
          { key: 'Permissions-Policy', value: 'camera=(self), microphone=(), geolocation=()' },
        ],
      },
      {
        // A worker takes its policy from its own answer, not from the page's: the one that scores a room may load its
        // own parts and reach nothing else.
        source: '/_next/static/:path*',
        headers: [{ key: 'Content-Security-Policy', value: "default-src 'none'; script-src 'self'; connect-src 'none'" }],
      },
    ]),
};

export default nextConfig;
