// Generates both Prisma clients, offline. A client that is current is left alone, so this may run before every check.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { generateJobs } from './prisma/generate.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

for (const job of generateJobs(root)) {
  if (job.current) continue;
  const run = spawnSync(process.execPath, job.command, { cwd: root, stdio: 'inherit', env: { ...process.env, ...job.env } });
  if (run.status !== 0) {
    console.error(`The database client for ${job.engine} could not be generated.`);
    process.exit(run.status ?? 1);
  }
  job.markCurrent();
}
