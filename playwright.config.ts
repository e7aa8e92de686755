import os from 'node:os';
import path from 'node:path';
import { defineConfig, devices } from '@playwright/test';
import { findChromium } from './scripts/test/find-chromium.mjs';

// `npm test` looks for a free port; by itself this takes a fixed one, the same in every worker.
const port = process.env.E2E_PORT ?? '3210';
const baseURL = `http://127.0.0.1:${port}`;
// Where the server keeps its database; a test that needs what no page makes, a second school, writes it there.
const folder = path.join(os.tmpdir(), `sandbucket-e2e-${port}`);
process.env.E2E_FOLDER = folder;
process.env.E2E_DATABASE_URL ??= `file:${path.join(folder, 'e2e.db')}`;

/** Files whose tests take minutes, or wait for one another. */
const LONG = /(whole-path|signing)\.spec\.ts/;

export default defineConfig({
  testDir: './tests/e2e',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  timeout: 60_000,
  // Passwords are slow to check by design, and a test machine is often busy.
  expect: { timeout: 15_000 },
  use: {
    ...devices['Desktop Chrome'],
    baseURL,
    // A trace of every step takes as long as the step. To get one: npm run test:e2e -- --trace retain-on-failure
    trace: 'off',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: findChromium(),
      // Chromium's own sandbox does not start for root, and containers have little shared memory.
      args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-gpu', '--disable-background-networking', '--disable-component-update'],
    },
  },
  // The first run happens once. It leaves a sign-in of every role for the others: tests/e2e/support/sign-ins.ts. The tests
  // that take minutes begin first: at the end one worker would wait for them.
  projects: [
    { name: 'first run', testMatch: /first-run\.setup\.ts/ },
    { name: 'the whole path', testMatch: LONG, dependencies: ['first run'] },
    { name: 'the rest', testMatch: /\.spec\.ts/, testIgnore: LONG, dependencies: ['first run'] },
  ],
  webServer: {
    // Without `exec` a shell would stand between the two, and the server could not see that Playwright is gone.
    command: `${process.platform === 'win32' ? '' : 'exec '}node scripts/serve-for-tests.mjs`,
    url: `${baseURL}/api/health`,
    env: { E2E_PORT: port, E2E_FOLDER: folder },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 10_000 },
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
