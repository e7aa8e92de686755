import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { z } from 'zod';
import type { ScoreResult } from '../../../lib/core/result';

const root = path.resolve(import.meta.dirname, '../../..');

interface Said { readonly code: number; readonly out: string; readonly err: string }

function run(file: string): Promise<Said> {
  return new Promise((resolve) => {
    execFile('npm', ['run', '--silent', 'score', '--', file], { cwd: root, maxBuffer: 64 * 1024 * 1024 }, (error, out, err) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, err });
    });
  });
}

/** What the command says of a document. @throws when the command refuses it */
export async function scoreByCommand(file: string): Promise<ScoreResult> {
  const { code, out, err } = await run(file);
  if (code !== 0) throw new Error(`the command refused ${file}: ${err}`);
  return JSON.parse(out) as ScoreResult;
}

/** The lines in which the command says what is wrong with a document. */
export async function faultsByCommand(file: string): Promise<readonly string[]> {
  const { code, err } = await run(file);
  if (code !== 2) throw new Error(`the command took ${file}`);
  return err.split('\n').filter((line) => line !== '');
}

/** The same lines for many documents, by one process: the command takes a second to start for each. */
export async function faultsOfAll(files: readonly string[]): Promise<Readonly<Record<string, readonly string[]>>> {
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', 'tests/support/faults-in-a-process.ts', ...files], { cwd: root });
  return z.record(z.string(), z.array(z.string())).parse(JSON.parse(stdout));
}

export const inProject = (file: string): string => path.join(root, file);
