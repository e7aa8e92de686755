import { compilerHint, missingBuildTools } from './compiler.mjs';
import { tooLittleSpace } from './disk-space.mjs';
import { isInstalled, isInstalledByHand, markInstalled } from './install-state.mjs';
import { runNpm } from './npm.mjs';
import { showProgress } from './progress.mjs';
import { compileEnvironment, ensureDriver } from './sqlite-driver.mjs';

/** @typedef {{ ok: true } | { ok: false, output: string, reason?: string }} StepResult */
/** @typedef {{ root: string, log: import('./log.mjs').Log }} Workplace */

/**
 * Installs the packages of package-lock.json, unless they are there.
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
export async function installWhenNeeded(place) {
  if (isInstalled(place.root)) return { ok: true };
  // What somebody installed by hand is kept if it can be used; it may be for another version of Node.
  const kept = isInstalledByHand(place.root) && (await showProgress('Looking at the installed packages', () => ensureDriver(place))).ok;
  const result = kept ? { ok: /** @type {const} */ (true) } : await installFromLock(place);
  if (result.ok) markInstalled(place.root);
  return result;
}

/**
 * @param {Workplace} place
 * @returns {Promise<StepResult>}
 */
async function installFromLock(place) {
  const noSpace = tooLittleSpace(place.root);
  if (noSpace) return { ok: false, output: '', reason: noSpace };
  const missing = missingBuildTools(process.platform, process.env.PATH ?? '');
  if (missing.length > 0) {
    console.log(`  Note: ${missing.join(' and ')} could not be found. The database driver may have to be compiled. ${compilerHint(process.platform)}`);
  }
  return showProgress('Installing packages, once: one to four minutes', async () => {
    // Types and tools are needed to build, also where NODE_ENV=production would leave them out.
    const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--no-progress'];
    const run = await runNpm(place, args, compileEnvironment(place.root, process.env));
    return run.ok ? ensureDriver(place) : { ok: false, output: run.output };
  });
}
