import { compilerHint, missingBuildTools } from './compiler.mjs';
import { runChild } from './children.mjs';
import { tooLittleSpace } from './disk-space.mjs';
import { isInstalled, isInstalledByHand, markInstalled } from './install-state.mjs';
import { showProgress } from './progress.mjs';

/** @typedef {{ ok: true } | { ok: false, output: string, reason?: string }} StepResult */
/** @typedef {{ root: string, log: import('./log.mjs').Log }} Workplace */

const LOAD_DRIVER = "new (require('better-sqlite3'))(':memory:').close()";

/**
 * Installs the packages of package-lock.json, unless they are there.
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
export async function installWhenNeeded({ root, log }) {
  if (isInstalled(root)) return { ok: true };
  if (isInstalledByHand(root) && (await driverLoads({ root, log })).ok) {
    markInstalled(root);
    return { ok: true };
  }
  const noSpace = tooLittleSpace(root);
  if (noSpace) return { ok: false, output: '', reason: noSpace };
  const missing = missingBuildTools(process.platform, process.env.PATH ?? '');
  if (missing.length > 0) {
    console.log(`  Note: ${missing.join(' and ')} could not be found. The database driver may have to be compiled. ${compilerHint(process.platform)}`);
  }
  const result = await showProgress('Installing packages, once: one to three minutes', () => install({ root, log }));
  if (result.ok) markInstalled(root);
  return result;
}

/**
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
async function install({ root, log }) {
  // Types and tools are needed to build, also where NODE_ENV=production would leave them out.
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--no-progress'];
  const { command, before, shell } = npmCommand();
  const run = await runChild(command, [...before, ...args], { cwd: root, log, shell });
  if (!run.ok) return { ok: false, output: run.output };
  const driver = await driverLoads({ root, log });
  if (driver.ok) return { ok: true };
  const reason = `The database driver better-sqlite3 was installed but cannot be loaded; it may not have been compiled. ${compilerHint(process.platform)}`;
  return { ok: false, output: driver.output, reason };
}

/** @param {Workplace} place */
function driverLoads({ root, log }) {
  return runChild(process.execPath, ['-e', LOAD_DRIVER], { cwd: root, log });
}

/** npm names its own script when it runs another; on Windows the command on the path needs a shell. */
function npmCommand() {
  const script = process.env.npm_execpath;
  if (script && /npm-cli\.c?js$/.test(script)) return { command: process.execPath, before: [script], shell: false };
  return { command: 'npm', before: [], shell: process.platform === 'win32' };
}
