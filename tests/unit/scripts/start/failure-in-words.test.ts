import { describe, expect, it } from 'vitest';
import { compilerHint, missingBuildTools } from '@/scripts/start/compiler.mjs';
import { NEEDED_BYTES, tooLittleSpace } from '@/scripts/start/disk-space.mjs';
import { failureInWords } from '@/scripts/start/failure-in-words.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

describe('failureInWords', () => {
  it.each([
    ['npm error code ENOSPC', 'The disk is full'],
    ['npm error gyp ERR! stack Error: not found: make', 'C++ compiler'],
    ['npm error code ENOTFOUND registry', 'could not be reached'],
    ['npm error code EINTEGRITY', 'npm cache clean'],
    ['FATAL ERROR: Reached heap limit Allocation failed - JavaScript heap out of memory', 'ran out of memory'],
    ['Error: listen EADDRINUSE: address already in use 127.0.0.1:3000', 'took the port'],
    ["EACCES: permission denied, open 'x'", 'may not write'],
    ['SqliteError: database is locked', 'holds the database'],
    ['SqliteError: file is not a database', 'damaged'],
  ])('reads %j as: %s', (output, words) => {
    expect(failureInWords(output, 'linux')).toContain(words);
  });

  it('names a full disk first, as it makes everything else fail', () => {
    expect(failureInWords('gyp ERR! write ENOSPC: no space left on device')).toContain('The disk is full');
  });

  it('makes nothing up', () => {
    expect(failureInWords('SyntaxError: Unexpected token')).toBeUndefined();
  });
});

describe('what it takes to compile', () => {
  it('is missing on an empty path, and named for the platform', () => {
    expect(missingBuildTools('linux', temporaryFolder())).toEqual(['a C++ compiler', 'make', 'python3']);
    expect(compilerHint('linux')).toContain('apt-get install build-essential python3');
    expect(compilerHint('darwin')).toContain('xcode-select --install');
    expect(compilerHint('win32')).toContain('winget install');
  });

  it('is not guessed on Windows, where the compiler is not on the path', () => {
    expect(missingBuildTools('win32', '')).toEqual([]);
  });
});

describe('tooLittleSpace', () => {
  it('says how much is free and how much is needed', () => {
    expect(tooLittleSpace('/school', 400_000_000)).toContain('/school has 0.4 GB free, and installing takes 1.5 GB');
    expect(tooLittleSpace('/school', NEEDED_BYTES)).toBeUndefined();
  });
});
