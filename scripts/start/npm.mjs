import { runChild } from './children.mjs';

/**
 * Runs npm in the project folder.
 * @param {import('./install.mjs').Workplace} place
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} env
 */
export function runNpm({ root, log }, args, env) {
  // npm names its own script when it runs another; on Windows the command on the path needs a shell.
  const script = process.env.npm_execpath;
  if (script && /npm-cli\.c?js$/.test(script)) return runChild(process.execPath, [script, ...args], { cwd: root, log, env });
  return runChild('npm', args, { cwd: root, log, env, shell: process.platform === 'win32' });
}
