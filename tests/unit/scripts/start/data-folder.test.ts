import { chmodSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { prepareDataFolder } from '@/scripts/start/data-folder.mjs';
import { findRunningServer, forgetRunningServer, noteRunningServer } from '@/scripts/start/running-server.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

const rights = (file: string) => statSync(file).mode & 0o777;

describe('prepareDataFolder', () => {
  it('makes a folder and a secret that only their owner can read, and keeps the secret', () => {
    const root = temporaryFolder();
    const folder = prepareDataFolder(root);
    const secret = path.join(folder, 'secret');
    expect([rights(folder), rights(secret)]).toEqual([0o700, 0o600]);
    const first = readFileSync(secret, 'utf8');
    expect(Buffer.from(first, 'base64url')).toHaveLength(32);
    prepareDataFolder(root);
    expect(readFileSync(secret, 'utf8')).toBe(first);
  });

  it('gives every installation another secret', () => {
    const secretOf = (root: string) => readFileSync(path.join(prepareDataFolder(root), 'secret'), 'utf8');
    expect(secretOf(temporaryFolder())).not.toBe(secretOf(temporaryFolder()));
  });

  it('takes the rights of others away from a folder that was there', () => {
    const root = temporaryFolder();
    mkdirSync(path.join(root, 'data'));
    writeFileSync(path.join(root, 'data', 'secret'), 'kept');
    chmodSync(path.join(root, 'data'), 0o755);
    chmodSync(path.join(root, 'data', 'secret'), 0o644);
    const folder = prepareDataFolder(root);
    expect([rights(folder), rights(path.join(folder, 'secret'))]).toEqual([0o700, 0o600]);
  });
});

describe('the note of a running server', () => {
  const server = { pid: process.pid, address: 'http://localhost:3000' };
  const answering = (answer: boolean) => () => Promise.resolve(answer);

  it('is believed while its process lives and its address answers', async () => {
    const root = temporaryFolder();
    prepareDataFolder(root);
    expect(await findRunningServer(root, answering(true))).toBeUndefined();
    noteRunningServer(root, server);
    expect(await findRunningServer(root, answering(true))).toEqual(server);
    expect(await findRunningServer(root, answering(false))).toBeUndefined();
    forgetRunningServer(root);
    expect(await findRunningServer(root, answering(true))).toBeUndefined();
  });

  it('is not believed when it is of a process that is gone, or cut short', async () => {
    const root = temporaryFolder();
    const folder = prepareDataFolder(root);
    noteRunningServer(root, { ...server, pid: 2 ** 22 + 1 });
    expect(await findRunningServer(root, answering(true))).toBeUndefined();
    writeFileSync(path.join(folder, 'running.json'), '{"pid":1');
    expect(await findRunningServer(root, answering(true))).toBeUndefined();
  });
});
