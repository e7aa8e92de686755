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
    environment: 'node',
    include: ['tests/unit/**/*.test.{ts,tsx}'],
    maxWorkers: '100%',
    globalSetup: ['tests/support/databases-global-setup.ts'],
    setupFiles: ['tests/support/fast-check-seed.ts'],
    testTimeout: 30_000,
  },
});
