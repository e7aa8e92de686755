import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';

const absolute = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));

/** What only calculates: a file leaves nothing behind for the next, so all of them share what was loaded once. */
const CALCULATION = [
  'tests/unit/{access,assessments,audit,charts,content,csv,design,events,forms,incidents,interchange,method,packs,papers,places,questionnaire,reference,sessions,today,try,wording}/**/*.test.{ts,tsx}',
  'tests/unit/core/!(risk)/**/*.test.ts',
];

const resolve = {
  alias: [
    { find: /^@\//, replacement: absolute('./') },
    // The package throws outside of a server bundle; this is what the bundler puts in its place.
    { find: /^server-only$/, replacement: absolute('./node_modules/server-only/empty.js') },
  ],
};
const common = { environment: 'node' as const, setupFiles: ['tests/support/fast-check-seed.ts'], testTimeout: 30_000 };

export default defineConfig({
  test: {
    maxWorkers: '100%',
    projects: [
      { resolve, test: { ...common, name: 'calculation', include: CALCULATION, isolate: false } },
      {
        resolve,
        test: { ...common, name: 'the rest', include: ['tests/unit/**/*.test.{ts,tsx}'], exclude: [...configDefaults.exclude, ...CALCULATION], globalSetup: ['tests/support/databases-global-setup.ts'] },
      },
    ],
  },
});
