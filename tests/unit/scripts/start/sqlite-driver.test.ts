import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { compileEnvironment, isFaulty } from '@/scripts/start/sqlite-driver.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

it('knows a driver with the fault by the call that it makes', () => {
  const root = temporaryFolder();
  const folder = path.join(root, 'node_modules/better-sqlite3/build/Release');
  expect(isFaulty(root)).toBe(false);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'better_sqlite3.node'), Buffer.from('\0ELF AddEnvironmentCleanupHook\0'));
  expect(isFaulty(root)).toBe(false);
  writeFileSync(path.join(folder, 'better_sqlite3.node'), Buffer.from('\0ELF _ZN4node28RemoveEnvironmentCleanupHookEPN2v8\0'));
  expect(isFaulty(root)).toBe(true);
});

it('keeps the compiler flags that are set already', () => {
  expect(compileEnvironment('/school room', { CXXFLAGS: '-O2', NODE_ENV: 'test' })).toEqual({
    CXXFLAGS: '-O2 -include "/school room/scripts/native/object-wrap.h"',
    NODE_ENV: 'test',
  });
  expect(compileEnvironment('/school', { NODE_ENV: 'test' }).CXXFLAGS).toBe('-include "/school/scripts/native/object-wrap.h"');
});
