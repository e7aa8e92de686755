// npm run restore -- BACKUP.db: puts a backup in the place of the SQLite database, while the program is stopped.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { prepareDataFolder } from './start/data-folder.mjs';
import { databaseUrl } from './start/database.mjs';
import { askHealth } from './start/health.mjs';
import { findRunningServer } from './start/running-server.mjs';
import { restoreFile } from './restore/restore-file.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));

/** @param {string | undefined} from */
async function restore(from) {
  const url = databaseUrl(root);
  if (!from) return 'Say which file: npm run restore -- BACKUP.db';
  if (!url.startsWith('file:')) return 'Your database is PostgreSQL: restore it with pg_restore or psql, as README.md says.';
  prepareDataFolder(root);
  const running = await findRunningServer(root, async (address) => (await askHealth(address)).state !== 'silent');
  if (running) return `The program runs at ${running.address}. Stop it first with Ctrl-C in its window.`;
  const to = path.resolve(root, url.slice('file:'.length));
  const restored = restoreFile({ from: path.resolve(from), to, now: new Date() });
  if (!restored.ok) return restored.reason;
  console.log(`Restored. ${restored.keptIn === undefined ? '' : `What stood there before is in ${path.relative(root, restored.keptIn)}. `}Put the secret of that time into data/secret as well, if it is not the same; then run npm start.`);
  return undefined;
}

const reason = await restore(process.argv[2]);
if (reason !== undefined) {
  console.error(reason);
  process.exitCode = 1;
}
