import { spawn } from 'node:child_process';
import { z } from 'zod';

const ResultSchema = z.object({ ok: z.literal(true), applied: z.array(z.string()) });

/** Migrates one database from several processes at once and returns what each of them applied. */
export function migrateAtOnce(count: number, url: string, root: string): Promise<string[][]> {
  return Promise.all(Array.from({ length: count }, () => migrateInAProcess(url, root)));
}

function migrateInAProcess(url: string, root: string): Promise<string[]> {
  const child = spawn(process.execPath, ['--import', 'tsx', 'tests/support/migrate-in-a-process.ts', url, root]);
  let output = '';
  child.stdout.on('data', (chunk: Buffer) => (output += chunk.toString()));
  child.stderr.on('data', (chunk: Buffer) => (output += chunk.toString()));
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => {
      if (code === 0) resolve(ResultSchema.parse(JSON.parse(output)).applied);
      else reject(new Error(output));
    });
  });
}
