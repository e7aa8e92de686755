import { nextScript } from './build.mjs';
import { startChild, unlessStopping } from './children.mjs';
import { waitUntilWell } from './health.mjs';
import { reachableHost } from './ports.mjs';

/**
 * @typedef {object} Server
 * @property {Promise<void>} ended settles when the server's process is gone
 * @property {() => string} output the end of what it printed
 */

const KEPT = 20_000;

/**
 * Starts the built program and waits until it can be used. Next's own script is run by Node directly: through npx or
 * npm the server would outlive the one who started it.
 * @param {{ root: string, log: import('./log.mjs').Log, port: number, host: string, environment: import('./server-environment.mjs').ServerEnvironment }} place
 * @returns {Promise<{ ok: true, server: Server } | { ok: false, output: string, reason?: string }>}
 */
export async function serve({ root, log, port, host, environment }) {
  let output = '';
  let lives = true;
  let quiet = true;
  const onOutput = (/** @type {string} */ text, /** @type {'out' | 'err'} */ stream) => {
    output = (output + text).slice(-KEPT);
    log.write(text);
    if (stream === 'err' && !quiet) process.stderr.write(text);
  };
  const env = { ...process.env, NODE_ENV: /** @type {const} */ ('production'), NEXT_TELEMETRY_DISABLED: '1', ...environment };
  const args = [nextScript(root), 'start', '-H', host, '-p', String(port)];
  const child = startChild(process.execPath, args, { cwd: root, env, onOutput });
  const ended = new Promise((/** @type {(value: void) => void} */ resolve) => {
    child.once('close', () => resolve());
    child.once('error', () => resolve());
  }).then(() => {
    lives = false;
    return unlessStopping();
  });
  const reachable = reachableHost(host);
  const address = `http://${reachable.includes(':') ? `[${reachable}]` : reachable}:${port}`;
  const ready = await waitUntilWell(address, () => lives);
  await unlessStopping();
  quiet = false;
  return ready.ok ? { ok: true, server: { ended, output: () => output } } : { ok: false, output, reason: ready.reason };
}
