import { spawn } from 'node:child_process';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { runChild } from '@/scripts/start/children.mjs';
import { elapsed } from '@/scripts/start/progress.mjs';
import { lastLines } from '@/scripts/start/log.mjs';

/** A program that starts another which never ends by itself, and prints the number of that one. */
const PARENT = `
  const { spawn } = require('node:child_process');
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], { stdio: 'ignore' });
  console.log('grandchild ' + child.pid);
  setInterval(() => {}, 1000);`;

const STARTER = `
  import { runChild } from './scripts/start/children.mjs';
  import { stopOnSignals } from './scripts/start/signals.mjs';
  stopOnSignals({ exitCode: 0 });
  await runChild(process.execPath, ['-e', process.argv[1]], { cwd: '.', log: { file: '', write: (text) => process.stdout.write(text) } });
  console.log('this must not be reached');`;

function exists(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ESRCH') return false;
    throw error;
  }
}

async function until(condition: () => boolean): Promise<void> {
  for (let tries = 0; tries < 200 && !condition(); tries += 1) await sleep(50);
  expect(condition()).toBe(true);
}

describe('runChild', () => {
  it('returns whether the program ended well, and what it printed', async () => {
    expect(await runChild(process.execPath, ['-e', 'console.log(1); console.error(2)'], { cwd: '.' })).toEqual({ ok: true, output: '1\n2\n' });
    expect(await runChild(process.execPath, ['-e', 'process.exit(3)'], { cwd: '.' })).toEqual({ ok: false, output: '' });
  });

  it('says when there is no such program', async () => {
    const run = await runChild('no-such-program', [], { cwd: '.' });
    expect(run.ok).toBe(false);
    expect(run.output).toContain('ENOENT');
  });
});

describe.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('on %s', (signal) => {
  it('everything that was started is ended, then the program itself, with exit code 0', async () => {
    const starter = spawn(process.execPath, ['--input-type=module', '-e', STARTER, PARENT], { stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    starter.stdout.on('data', (chunk: Buffer) => (output += chunk.toString()));
    await until(() => /grandchild \d+\n/.test(output));
    const grandchild = Number(/grandchild (\d+)\n/.exec(output)?.[1]);
    expect(exists(grandchild)).toBe(true);
    starter.kill(signal);
    await until(() => starter.exitCode !== null);
    expect(starter.exitCode).toBe(0);
    expect(output).not.toContain('must not be reached');
    await until(() => !exists(grandchild));
  });
});

describe('what is shown of a step', () => {
  it.each([
    [400, '0.4 s'],
    [9_960, '10.0 s'],
    [59_400, '59 s'],
    [125_000, '2 min 5 s'],
  ])('%i ms are %s', (ms, words) => {
    expect(elapsed(0, ms)).toBe(words);
  });

  it('are the last lines that hold something', () => {
    expect(lastLines('a\n\nb\r\nc\n  \n', 2)).toEqual(['b', 'c']);
  });
});
