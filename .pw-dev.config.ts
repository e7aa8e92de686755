import { defineConfig, devices } from '@playwright/test';
import { findChromium } from './scripts/test/find-chromium.mjs';
export default defineConfig({ testDir: './tests/e2e', workers: 1, timeout: 90_000, use: { ...devices['Desktop Chrome'], baseURL: 'http://localhost:3100', launchOptions: { executablePath: findChromium(), args: ['--no-sandbox','--disable-dev-shm-usage','--disable-gpu'] } } });
