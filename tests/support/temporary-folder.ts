import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';

/** Returns a new empty folder that is removed at the end of the running test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
