const DEFAULT_PORT = 3000;
/** Only this machine can reach the program unless `--host` says otherwise. */
const DEFAULT_HOST = '127.0.0.1';

export const HELP = `Usage: npm start [-- --port N] [-- --host ADDRESS] [-- --demo]

  --port N         serve on this port instead of ${DEFAULT_PORT} (or set PORT)
  --host ADDRESS   let others reach it: 0.0.0.0 means everyone on your network
  --demo           show a school of our own invention, kept apart from yours in data/demo.db
  --help           print this`;

/** @typedef {{ port: number, host: string, demo: boolean, help: boolean }} StartOptions */

/**
 * Reads what follows `npm start --`. `--port N` goes before the variable PORT.
 * @param {readonly string[]} given
 * @param {string | undefined} portVariable
 * @returns {{ ok: true, options: StartOptions } | { ok: false, reason: string }}
 */
export function parseArguments(given, portVariable) {
  const options = { port: portVariable || String(DEFAULT_PORT), host: DEFAULT_HOST, demo: false, help: false };
  const rest = given.flatMap((argument) => (/^--\w+=/.test(argument) ? splitAtEquals(argument) : [argument]));
  while (rest.length > 0) {
    const name = rest.shift();
    if (name === '--help' || name === '-h') options.help = true;
    else if (name === '--demo') options.demo = true;
    else if (name === '--port' || name === '--host') {
      const value = rest.shift();
      if (!value) return { ok: false, reason: `${name} needs a value.\n\n${HELP}` };
      options[name === '--port' ? 'port' : 'host'] = value;
    } else return { ok: false, reason: `I do not know ${name}.\n\n${HELP}` };
  }
  const port = Number(options.port);
  if (!/^\d+$/.test(options.port) || port < 1 || port > 65535) {
    return { ok: false, reason: `A port is a whole number from 1 to 65535, not ${options.port}.` };
  }
  return { ok: true, options: { ...options, port } };
}

/** @param {string} argument */
function splitAtEquals(argument) {
  const at = argument.indexOf('=');
  return [argument.slice(0, at), argument.slice(at + 1)];
}
