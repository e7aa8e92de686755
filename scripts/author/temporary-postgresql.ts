// A throw-away PostgreSQL server from locally installed binaries: for writing migrations and for tests.
import { execFileSync, spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';

const START_WITHIN_MS = 20_000;
const DEBIAN_FOLDER = '/usr/lib/postgresql';

export interface TemporaryPostgresql {
  url: string;
  stop: () => Promise<void>;
}

/** PostgreSQL refuses to run as root, so root hands the server to the account its package brought along. */
interface Account {
  uid: number;
  gid: number;
}

/** Returns the folder of PostgreSQL's programs, or undefined when it is not installed or cannot be run. */
export function findPostgresql(): string | undefined {
  const versions = existsSync(DEBIAN_FOLDER) ? readdirSync(DEBIAN_FOLDER).sort().reverse() : [];
  const folders = [...versions.map((version) => path.join(DEBIAN_FOLDER, version, 'bin')), ...(process.env.PATH ?? '').split(path.delimiter)];
  const folder = folders.find((candidate) => existsSync(path.join(candidate, 'initdb')) && existsSync(path.join(candidate, 'postgres')));
  return folder && (process.getuid?.() !== 0 || existsSync(DEBIAN_FOLDER)) ? folder : undefined;
}

/** Starts an empty server on a free port of this machine; `stop` ends it and removes its files. */
export async function startTemporaryPostgresql(binaries: string): Promise<TemporaryPostgresql> {
  const account = serverAccount();
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-postgresql-'));
  if (account) chownSync(folder, account.uid, account.gid);
  const data = path.join(folder, 'data');
  const initdb = ['-D', data, '-U', 'sandbucket', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync'];
  execFileSync(path.join(binaries, 'initdb'), initdb, { ...account, cwd: folder, stdio: 'pipe' });
  const port = await freePort();
  const server = spawn(path.join(binaries, 'postgres'), ['-D', data, '-h', '127.0.0.1', '-p', String(port), '-k', folder, '-F'], {
    ...account, cwd: folder, stdio: 'ignore',
  });
  const url = `postgresql://sandbucket@127.0.0.1:${port}/postgres`;
  const stop = () => stopServer(server, folder);
  await waitUntilReady(url, server).catch(async (error: unknown) => {
    await stop();
    throw error;
  });
  return { url, stop };
}

function serverAccount(): Account | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const numberOf = (flag: string) => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  return { uid: numberOf('-u'), gid: numberOf('-g') };
}

async function stopServer(server: ChildProcess, folder: string): Promise<void> {
  if (server.exitCode === null && server.signalCode === null) {
    const exited = once(server, 'exit');
    // At once: nothing of it is kept, so nothing need be written down in order.
    server.kill('SIGQUIT');
    await exited;
  }
  rmSync(folder, { recursive: true, force: true });
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const address = probe.address();
  probe.close();
  await once(probe, 'close');
  if (address === null || typeof address === 'string') throw new Error('The system gave no port');
  return address.port;
}

async function waitUntilReady(url: string, server: ChildProcess): Promise<void> {
  const deadline = Date.now() + START_WITHIN_MS;
  for (;;) {
    const client = new pg.Client({ connectionString: url });
    try {
      await client.connect();
      await client.end();
      return;
    } catch (error) {
      // Refused connections are expected while it starts; anything after the deadline or its end is the real fault.
      if (server.exitCode !== null || Date.now() > deadline) throw error;
      await sleep(100);
    }
  }
}
