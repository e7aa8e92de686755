import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';

/**
 * Returns what is missing to compile a native module; nothing when it is all there. On Windows the compiler is not on
 * the path, so nothing is said before the compilation was tried.
 * @param {NodeJS.Platform} platform
 * @param {string} searchPath the variable PATH
 * @returns {string[]}
 */
export function missingBuildTools(platform, searchPath) {
  if (platform === 'win32') return [];
  // macOS has stand-ins in /usr/bin that only offer to install the real tools.
  if (platform === 'darwin') return spawnSync('xcode-select', ['-p']).status === 0 ? [] : ['the Xcode command line tools'];
  const has = (/** @type {string} */ name) => isOnPath(name, searchPath);
  const missing = ['c++', 'g++', 'clang++'].some(has) ? [] : ['a C++ compiler'];
  return [...missing, ...['make', 'python3'].filter((name) => !has(name))];
}

/**
 * @param {string} name
 * @param {string} searchPath
 */
export function isOnPath(name, searchPath) {
  return searchPath.split(path.delimiter).some((folder) => folder !== '' && existsSync(path.join(folder, name)));
}

/**
 * Returns how to get a compiler on this platform.
 * @param {NodeJS.Platform} platform
 */
export function compilerHint(platform) {
  if (platform === 'darwin') return 'Install it with: xcode-select --install';
  if (platform === 'win32') {
    return 'Install the "Visual Studio Build Tools" with the part "Desktop development with C++", and Python 3: winget install Microsoft.VisualStudio.2022.BuildTools Python.Python.3.12';
  }
  return 'Install it with: sudo apt-get install build-essential python3 (Debian, Ubuntu), or sudo dnf install gcc-c++ make python3 (Fedora)';
}
