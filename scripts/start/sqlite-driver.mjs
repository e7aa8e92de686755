import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { runChild } from './children.mjs';
import { compilerHint } from './compiler.mjs';
import { runNpm } from './npm.mjs';

/** @typedef {import('./install.mjs').Workplace} Workplace */
/** @typedef {import('./install.mjs').StepResult} StepResult */

const LOAD = "new (require('better-sqlite3'))(':memory:').close()";
/** Only Node's class with the fault calls this; see scripts/native/object-wrap.h. */
const FAULTY_CALL = 'RemoveEnvironmentCleanupHook';

/**
 * Returns the environment in which the driver is to be compiled, should it have to be.
 * @param {string} root project folder
 * @param {NodeJS.ProcessEnv} env
 * @returns {NodeJS.ProcessEnv}
 */
export function compileEnvironment(root, env) {
  const header = path.join(root, 'scripts', 'native', 'object-wrap.h');
  return { ...env, CXXFLAGS: `${env.CXXFLAGS ?? ''} -include "${header}"`.trim() };
}

/**
 * Makes sure that the SQLite driver can be used: it loads, and it is not one that Node 24.19 and later abort with. Such
 * a one comes from compiling it outside of these scripts; it is compiled once more.
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
export async function ensureDriver(place) {
  if (isFaulty(place.root)) {
    const rebuilt = await runNpm(place, ['rebuild', 'better-sqlite3', '--build-from-source'], compileEnvironment(place.root, process.env));
    if (!rebuilt.ok || isFaulty(place.root)) return { ok: false, output: rebuilt.output, reason: faultyInWords() };
  }
  const load = await runChild(process.execPath, ['-e', LOAD], { cwd: place.root, log: place.log });
  if (load.ok) return { ok: true };
  const reason = `The database driver better-sqlite3 was installed but cannot be loaded; it may not have been compiled. ${compilerHint(process.platform)}`;
  return { ok: false, output: load.output, reason };
}

/**
 * Says whether the compiled driver holds the call that Node aborts on.
 * @param {string} root project folder
 */
export function isFaulty(root) {
  const driver = path.join(root, 'node_modules', 'better-sqlite3', 'build', 'Release', 'better_sqlite3.node');
  return existsSync(driver) && readFileSync(driver).includes(FAULTY_CALL);
}

function faultyInWords() {
  return `With Node.js ${process.versions.node} the compiled database driver ends the server after a while, and it could not be compiled in the way that avoids it. Use Node.js 22, or a connection over which its ready-made driver can be downloaded.`;
}
