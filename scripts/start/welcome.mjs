import { isOnlyThisMachine, reachableHost } from './ports.mjs';

/**
 * Returns what is printed when the program can be used: its address and what to do next.
 * @param {{ address: string, host: string, setupCode: string, isNew: boolean }} server host: what it listens on; isNew: no school was made yet
 */
export function welcome({ address, host, setupCode, isNew }) {
  const steps = isNew ? firstSteps(address, setupCode) : [`Open ${address} in your browser and sign in.`];
  const all = [...steps, `Keep this window open. ${whoReachesIt(host)}`];
  return `
Sandbucket is running at ${address}

What to do next
${all.map((step, index) => `  ${index + 1}. ${step}`).join('\n')}

All it keeps is in the folder data/. Stop it with Ctrl-C.
`;
}

/**
 * @param {string} address
 * @param {string} setupCode
 */
function firstSteps(address, setupCode) {
  const code = setupCode === '' ? '' : ` It asks for this code, so that nobody on your network comes before you:\n\n         ${setupCode}\n`;
  return [`Open ${address}/begin in your browser and make your school and the first safety officer's account.${code}`, `Or look around first at ${address}/try. It needs no account.`];
}

/** @param {string} host */
function whoReachesIt(host) {
  if (isOnlyThisMachine(host)) return 'Only this machine can reach it.';
  return `It is open to your network.${reachableHost(host) === host ? '' : ' Others on your network reach it under the name or address of this machine.'}`;
}
