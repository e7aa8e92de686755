import { reachableHost } from './ports.mjs';

/**
 * Returns what is printed when the program can be used: its address and what to do next.
 * @param {string} address
 * @param {string} host what it listens on
 */
export function welcome(address, host) {
  const onlyHere = ['127.0.0.1', '::1', 'localhost'].includes(host);
  const others = reachableHost(host) === host ? '' : ' Others on your network reach it under the name or address of this machine.';
  return `
Sandbucket is running at ${address}

What to do next
  1. Open ${address}/try in your browser. It needs no account.
  2. Look at one of the example rooms, then change its answers to those of your own.
  3. Keep this window open. ${onlyHere ? 'Only this machine can reach it.' : `It is open to your network.${others}`}

All it keeps is in the folder data/. Stop it with Ctrl-C.
`;
}
