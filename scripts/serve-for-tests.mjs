// The built program on a database of its own that is thrown away at the end; on the one of E2E_DATABASE_URL when that is
// set, which whoever set it throws away. Playwright starts and stops it.
import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { prepareDatabase } from './start/database.mjs';
import { beginLog } from './start/log.mjs';
import { reportFailure } from './start/report-failure.mjs';
import { serve } from './start/serve.mjs';
import { serverEnvironment } from './start/server-environment.mjs';
import { stopOnSignals } from './start/signals.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const folder = process.env.E2E_FOLDER ?? mkdtempSync(path.join(os.tmpdir(), 'sandbucket-e2e-'));
// A run that was ended by force left its own.
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { mode: 0o700 });
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
// Playwright starts this apart from itself, so it would stay when Playwright is ended by force.
stopOnSignals({ exitCode: 0, endWithParent: true });

const log = beginLog(path.join(root, 'data', 'logs', 'serve-for-tests.log'));
const [host, port] = ['127.0.0.1', Number(process.env.E2E_PORT)];
const url = process.env.E2E_DATABASE_URL ?? `file:${path.join(folder, 'e2e.db')}`;
const environment = serverEnvironment({ url, host, address: `http://${host}:${port}`, secret: randomBytes(32).toString('base64url') });

const prepared = await prepareDatabase({ root, log, url });
const started = prepared.ok ? await serve({ root, log, host, port, environment }) : prepared;
if (!started.ok) {
  reportFailure('Serving for the tests', started, log.file);
  process.exitCode = 1;
} else if ('server' in started) {
  await started.server.ended;
}
