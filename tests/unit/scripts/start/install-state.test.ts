import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { installMatchesLock, isInstalled, isInstalledByHand, markInstalled } from '@/scripts/start/install-state.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

const WANTED = { packages: { '': {}, 'node_modules/a': { version: '1.0.0' }, 'node_modules/for-mac': { version: '2.0.0', optional: true } } };

describe('installMatchesLock', () => {
  it.each([
    ['all but the optional', { 'node_modules/a': { version: '1.0.0' } }, true],
    ['another version', { 'node_modules/a': { version: '1.0.1' } }, false],
    ['a missing package', {}, false],
    ['one that is no longer wanted', { 'node_modules/a': { version: '1.0.0' }, 'node_modules/old': { version: '1.0.0' } }, false],
  ])('with %s', (_what, packages, matches) => {
    expect(installMatchesLock(WANTED, { packages })).toBe(matches);
  });
});

describe('the mark of an installation', () => {
  it('holds until the lock file changes', () => {
    const root = temporaryFolder();
    mkdirSync(path.join(root, 'node_modules'));
    writeFileSync(path.join(root, 'package-lock.json'), JSON.stringify(WANTED));
    expect(isInstalled(root)).toBe(false);
    markInstalled(root);
    expect(isInstalled(root)).toBe(true);
    writeFileSync(path.join(root, 'package-lock.json'), '{"packages":{}}');
    expect(isInstalled(root)).toBe(false);
  });

  it('is not needed when somebody installed the same packages by hand', () => {
    const root = temporaryFolder();
    mkdirSync(path.join(root, 'node_modules'));
    writeFileSync(path.join(root, 'package-lock.json'), JSON.stringify(WANTED));
    expect(isInstalledByHand(root)).toBe(false);
    writeFileSync(path.join(root, 'node_modules/.package-lock.json'), JSON.stringify({ packages: { 'node_modules/a': { version: '1.0.0' } } }));
    expect(isInstalledByHand(root)).toBe(true);
  });
});
