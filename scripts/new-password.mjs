// npm run new-password -- --email NAME@SCHOOL: a way back in for the last safety officer, by whoever runs the program.
import { existsSync, readFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { prepareDataFolder } from './start/data-folder.mjs';
import { databaseUrl } from './start/database.mjs';
import { readSecret } from './start/server-environment.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const noted = path.join(root, 'data', 'running.json');

/** Where people reach the program: the address that is set, else the one it runs at now. */
function address() {
  if (process.env.BETTER_AUTH_URL) return process.env.BETTER_AUTH_URL;
  return existsSync(noted) ? (/"address":"([^"]+)"/.exec(readFileSync(noted, 'utf8'))?.[1] ?? '') : '';
}

const environment = {
  ...process.env, DATABASE_URL: databaseUrl(root), BETTER_AUTH_SECRET: process.env.BETTER_AUTH_SECRET || readSecret(prepareDataFolder(root)), LINK_ADDRESS: address(),
  // Stands in for the guard `server-only`, which refuses to be loaded outside of a server.
  TSX_TSCONFIG_PATH: path.join(root, 'scripts', 'demo', 'tsconfig.json'),
};
const run = spawnSync(process.execPath, ['--import', 'tsx', path.join('scripts', 'make-password-link.ts'), ...process.argv.slice(2)], { cwd: root, env: environment, stdio: 'inherit' });
process.exitCode = run.status ?? 1;
