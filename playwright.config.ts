import { defineConfig, devices } from '@playwright/test';
import { findChromium } from './scripts/test/find-chromium.mjs';

// `npm test` looks for a free port; by itself this takes a fixed one, the same in every worker.
const port = process.env.E2E_PORT ?? '3210';
const baseURL = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: './tests/e2e',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  timeout: 60_000,
  use: {
    ...devices['Desktop Chrome'],
    baseURL,
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath: findChromium(),
      // Chromium's own sandbox does not start for root, and containers have little shared memory.
      args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-gpu', '--disable-background-networking', '--disable-component-update'],
    },
  },
  webServer: {
    // Without `exec` a shell would stand between the two, and the server could not see that Playwright is gone.
    command: `${process.platform === 'win32' ? '' : 'exec '}node scripts/serve-for-tests.mjs`,
    url: `${baseURL}/api/health`,
    env: { E2E_PORT: port },
    gracefulShutdown: { signal: 'SIGTERM', timeout: 10_000 },
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
