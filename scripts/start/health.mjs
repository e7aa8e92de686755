import { setTimeout as sleep } from 'node:timers/promises';

const ASK_WITHIN_MS = 3000;
const READY_WITHIN_MS = 60_000;

/**
 * Asks a server how it is.
 * @param {string} address
 * @returns {Promise<{ state: 'well' } | { state: 'failing', body: string } | { state: 'silent' }>}
 */
export async function askHealth(address) {
  try {
    const response = await fetch(`${address}/api/health`, { signal: AbortSignal.timeout(ASK_WITHIN_MS) });
    return response.ok ? { state: 'well' } : { state: 'failing', body: await response.text() };
  } catch (error) {
    // fetch reports a refused connection and a time-out as errors: both mean that nobody answers yet.
    if (error instanceof TypeError || error instanceof DOMException) return { state: 'silent' };
    throw error;
  }
}

/**
 * Waits until a server says it is well.
 * @param {string} address
 * @param {() => boolean} lives whether the server's process is still there
 * @returns {Promise<{ ok: true } | { ok: false, reason: string }>}
 */
export async function waitUntilWell(address, lives) {
  const deadline = Date.now() + READY_WITHIN_MS;
  let last = 'it does not answer';
  while (Date.now() < deadline) {
    if (!lives()) return { ok: false, reason: 'The server ended right after its start.' };
    const health = await askHealth(address);
    if (health.state === 'well') return { ok: true };
    if (health.state === 'failing') last = `it answers that it is not well: ${health.body}`;
    await sleep(150);
  }
  return { ok: false, reason: `The server is not ready after ${READY_WITHIN_MS / 1000} seconds: ${last}.` };
}

/**
 * Says whether the program has no school yet: only then does it show the page that makes one. The first page a server
 * draws takes many seconds on a busy machine, so this waits as long as for the server itself.
 * @param {string} address
 */
export async function asksForSchool(address) {
  const response = await fetch(`${address}/begin`, { redirect: 'manual', signal: AbortSignal.timeout(READY_WITHIN_MS) });
  return response.status === 200;
}
