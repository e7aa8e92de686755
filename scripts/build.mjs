// npm run build: the database clients and the program, unless both are of the present sources.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, generateClients, isBuilt } from './start/build.mjs';
import { beginLog } from './start/log.mjs';
import { showProgress } from './start/progress.mjs';
import { reportFailure } from './start/report-failure.mjs';
import { stopOnSignals } from './start/signals.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const log = beginLog(path.join(root, 'data', 'logs', 'build.log'));
stopOnSignals({ exitCode: 130 });

const clients = await generateClients({ root, log });
const result = clients.ok && !isBuilt(root) ? await showProgress('Building', () => build({ root, log })) : clients;
if (!result.ok) {
  reportFailure('Building', result, log.file);
  process.exitCode = 1;
}
