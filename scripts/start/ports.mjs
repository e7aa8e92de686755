import { connect, createServer } from 'node:net';

/** How many ports after the wanted one are tried. */
const TRIES = 50;
const CONNECT_WITHIN_MS = 500;

/**
 * Says whether a port can be served on. Listening alone does not tell: some systems let one program take a port on one
 * address while another holds it on all of them, so a connection is tried as well.
 * @param {number} port
 * @param {string} host
 * @returns {Promise<'free' | 'taken' | 'forbidden' | 'no-such-host'>}
 */
export async function portState(port, host) {
  if (await answers(port, host)) return 'taken';
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EACCES') resolve('forbidden');
      else resolve(error.code === 'EADDRINUSE' ? 'taken' : 'no-such-host');
    });
    probe.listen(port, host, () => probe.close(() => resolve('free')));
  });
}

/**
 * Returns the first free port after `port`, or undefined when there is none among the next fifty.
 * @param {number} port
 * @param {(port: number) => Promise<string>} stateOf
 * @returns {Promise<number | undefined>}
 */
export async function nextFreePort(port, stateOf) {
  for (let candidate = port + 1; candidate <= Math.min(port + TRIES, 65535); candidate += 1) {
    if ((await stateOf(candidate)) === 'free') return candidate;
  }
  return undefined;
}

/**
 * @param {number} port
 * @param {string} host
 * @returns {Promise<boolean>}
 */
function answers(port, host) {
  return new Promise((resolve) => {
    const socket = connect({ port, host: reachableHost(host), timeout: CONNECT_WITHIN_MS });
    const end = (/** @type {boolean} */ answered) => {
      socket.destroy();
      resolve(answered);
    };
    socket.once('connect', () => end(true));
    socket.once('error', () => end(false));
    socket.once('timeout', () => end(false));
  });
}

/**
 * Returns the address at which this machine reaches a server that listens on `host`.
 * @param {string} host
 */
export function reachableHost(host) {
  if (host === '0.0.0.0') return '127.0.0.1';
  return host === '::' ? '::1' : host;
}

/**
 * Returns the address to print and to open in a browser.
 * @param {number} port
 * @param {string} host
 */
export function browserAddress(port, host) {
  const reachable = reachableHost(host);
  if (reachable === '127.0.0.1' || reachable === '::1') return `http://localhost:${port}`;
  return `http://${reachable.includes(':') ? `[${reachable}]` : reachable}:${port}`;
}

/**
 * Says whether a server that listens on `host` can be reached from this machine only.
 * @param {string} host
 */
export function isOnlyThisMachine(host) {
  return host === 'localhost' || host === '::1' || /^127\.\d+\.\d+\.\d+$/.test(host);
}
