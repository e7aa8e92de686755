import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const absolute = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^@\//, replacement: absolute('./') },
      // The package throws outside of a server bundle; this is what the bundler puts in its place.
      { find: /^server-only$/, replacement: absolute('./node_modules/server-only/empty.js') },
    ],
  },
  test: {
    environment: 'node', include: ['tests/unit/**/*.test.{ts,tsx}'], maxWorkers: '100%', setupFiles: ['tests/support/fast-check-seed.ts'],
    testTimeout: 30_000,
    // Some start a database server in a hook, several at once on a small machine.
    hookTimeout: 60_000,
  },
});
