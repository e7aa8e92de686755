import { nextFreePort, portState } from './ports.mjs';

/** @typedef {{ ok: true, port: number, note?: string } | { ok: false, reason: string }} PortChoice */

/**
 * Returns the wanted port, or the next free one when it is taken: after asking a person, and with a note to others.
 * @param {number} wanted
 * @param {string} host
 * @param {(question: string) => Promise<string>} [ask] absent when nobody is there to be asked
 * @param {(port: number, host: string) => Promise<string>} [stateOf]
 * @returns {Promise<PortChoice>}
 */
export async function choosePort(wanted, host, ask, stateOf = portState) {
  const state = await stateOf(wanted, host);
  if (state === 'free') return { ok: true, port: wanted };
  if (state === 'forbidden') {
    return { ok: false, reason: `Your account may not serve on port ${wanted}. Take one above 1023: npm start -- --port 3000` };
  }
  if (state === 'no-such-host') {
    return { ok: false, reason: `This machine has no address ${host} to serve on. Leave --host out, or give 0.0.0.0 for all of them.` };
  }
  const next = await nextFreePort(wanted, (port) => stateOf(port, host));
  if (next === undefined) {
    return { ok: false, reason: `Port ${wanted} and the fifty after it are taken. Choose another one: npm start -- --port 8080` };
  }
  if (!ask) return { ok: true, port: next, note: `Port ${wanted} is taken by another program, so this uses port ${next}.` };
  const answer = (await ask(`Port ${wanted} is taken by another program. Use port ${next} instead? [Y/n] `)).trim();
  if (/^(y|yes)?$/i.test(answer)) return { ok: true, port: next };
  return { ok: false, reason: `Stop the program on port ${wanted}, or choose a port yourself: npm start -- --port N` };
}
