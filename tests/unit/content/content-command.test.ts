import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';

function command(words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'scripts/content.ts', ...words], { encoding: 'utf8' });
  return { status, stdout, stderr };
}

it('prints the edition in force, with its number', () => {
  const { status, stdout } = command([]);
  expect(status).toBe(0);
  expect(stdout).toBe(`${JSON.stringify(edition2, null, 1)}\n`);
  expect(edition2.edition).toBe(2);
});

it('prints an edition by number, key by key as it was published', () => {
  const { status, stdout } = command(['--edition', '1']);
  expect(status).toBe(0);
  expect(stdout).toBe(`${JSON.stringify(edition1, null, 1)}\n`);
});

it('refuses what it cannot answer', () => {
  expect(command(['--edition', '99'])).toEqual({ status: 2, stdout: '', stderr: 'There is no edition "99". There is: 1, 2.\n' });
});
