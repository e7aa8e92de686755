import { readdirSync } from 'node:fs';
import { expect } from '@playwright/test';
import packageJson from '../../package.json' with { type: 'json' };
import { test } from './support/test';

test('says that it is well, and which version it is', async ({ request }) => {
  const response = await request.get('/api/health');
  expect(response.status()).toBe(200);
  expect(response.headers()['cache-control']).toBe('no-store');
  const written = readdirSync('prisma/sqlite/migrations', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(await response.json()).toMatchObject({ status: 'ok', version: packageJson.version, database: 'ready', migrations: written.length });
});

test('every page has a policy with a nonce of its own, on all of its scripts', async ({ request }) => {
  const nonces = new Set<string>();
  for (const path of ['/', '/try', '/try']) {
    const response = await request.get(path);
    const policy = response.headers()['content-security-policy'] ?? '';
    const nonce = /'nonce-([^']+)'/.exec(policy)?.[1];
    expect(nonce, `policy of ${path}: ${policy}`).toBeTruthy();
    nonces.add(String(nonce));
    const scripts = (await response.text()).match(/<script\b[^>]*>/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    for (const script of scripts) expect(script).toContain(`nonce="${nonce}"`);
  }
  expect(nonces.size).toBe(3);
});

test('tells browsers not to guess, and nobody what it is made with', async ({ request }) => {
  const headers = (await request.get('/')).headers();
  expect(headers['x-content-type-options']).toBe('nosniff');
  expect(headers['referrer-policy']).toBe('same-origin');
  expect(headers['x-powered-by']).toBeUndefined();
});
