import { describe, expect, it } from 'vitest';
import packageJson from '@/package.json';
import { checkNodeVersion } from '@/scripts/start/node-version.mjs';

const RANGE = packageJson.engines.node;

describe('checkNodeVersion', () => {
  it.each(['20.19.0', '20.20.2', '22.12.0', '22.22.0', '24.0.0', '25.3.1'])('takes %s', (version) => {
    expect(checkNodeVersion(version, RANGE)).toEqual({ ok: true });
  });

  it.each(['14.21.3', '18.20.8', '20.18.3', '21.7.3', '22.11.0', '23.11.1'])('refuses %s and says what to install', (version) => {
    const check = checkNodeVersion(version, RANGE);
    expect(check.ok).toBe(false);
    if (check.ok) return;
    expect(check.reason).toContain(`you have ${version}`);
    expect(check.reason).toContain('20.19 or a later 20, or 22.12 or a later 22, or 24 or later');
    expect(check.reason).toContain('https://nodejs.org');
  });

  it('throws for a range it cannot read, which is a mistake in package.json', () => {
    expect(() => checkNodeVersion('20.19.0', 'lts')).toThrow('Not a version');
  });
});
