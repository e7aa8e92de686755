import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { temporaryFolder } from '@/tests/support/temporary-folder';

export interface ToolResult { readonly code: number | null; readonly text: string }

/** Runs a program that is no part of this project; the test command brings them all. What it says comes back in one text. */
export function runTool(command: string, args: readonly string[], folder = process.cwd()): ToolResult {
  const { status, stdout, stderr, error } = spawnSync(command, args, { maxBuffer: 64 * 1024 * 1024, cwd: folder, encoding: 'utf8', env: { ...process.env, LC_ALL: 'C.UTF-8' } });
  if (error !== undefined) throw error;
  return { code: status, text: `${stdout}${stderr}` };
}

/** Writes a file that is removed at the end of the test and returns where it is. */
export function asFile(bytes: Uint8Array | string, name = 'paper.pdf'): string {
  const file = path.join(temporaryFolder(), name);
  writeFileSync(file, bytes);
  return file;
}

/** The text of a PDF, as another program reads it out. */
export function textOf(pdf: Uint8Array, ...options: string[]): string {
  return runTool('pdftotext', [...options, asFile(pdf), '-']).text;
}
