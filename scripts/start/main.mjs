import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { HELP, parseArguments } from './arguments.mjs';
import { ask, somebodyIsThere } from './ask.mjs';
import { build, generateClients, isBuilt } from './build.mjs';
import { choosePort } from './choose-port.mjs';
import { prepareDataFolder } from './data-folder.mjs';
import { databaseUrl, prepareDatabase } from './database.mjs';
import { demoDatabaseUrl, demoSignIns, makeDemo } from './demo.mjs';
import { failureInWords } from './failure-in-words.mjs';
import { askHealth, asksForSchool } from './health.mjs';
import { installWhenNeeded } from './install.mjs';
import { beginLog } from './log.mjs';
import { browserAddress } from './ports.mjs';
import { showProgress } from './progress.mjs';
import { reportFailure } from './report-failure.mjs';
import { findRunningServer, forgetRunningServer, noteRunningServer } from './running-server.mjs';
import { serve } from './serve.mjs';
import { readSecret, serverEnvironment } from './server-environment.mjs';
import { stopOnSignals } from './signals.mjs';
import { welcome } from './welcome.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..', '..');

/**
 * Runs `npm start`. Sets the exit code: 1 when something went wrong, 2 for a wrong argument, 0 after Ctrl-C.
 * @param {readonly string[]} given
 */
export async function main(given) {
  const parsed = parseArguments(given, process.env.PORT);
  if (!parsed.ok) return end(2, parsed.reason);
  if (parsed.options.help) return console.log(HELP);
  stopOnSignals({ beforeExit: () => forgetRunningServer(root), exitCode: 0 });
  try {
    process.exitCode = await start(parsed.options);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    end(1, [failureInWords(message), message].filter(Boolean).join('\n'));
  }
}

/**
 * @param {import('./arguments.mjs').StartOptions} options
 * @returns {Promise<number>} exit code, once the server has ended by itself
 */
async function start({ port: wanted, host, demo }) {
  console.log('Sandbucket\n');
  const data = prepareDataFolder(root);
  const other = await findRunningServer(root, async (address) => (await askHealth(address)).state !== 'silent');
  if (other) return fail(`Sandbucket already runs from this folder, at ${other.address} (process ${other.pid}). Open it there, or stop it first with Ctrl-C in its window.`);

  // Asked before the long steps, so that nobody comes back after minutes to a question.
  const choice = await choosePort(wanted, host, somebodyIsThere() ? ask : undefined);
  if (!choice.ok) return fail(choice.reason);
  if (choice.note) console.log(`  ${choice.note}`);

  const log = beginLog(path.join(data, 'logs', 'start.log'));
  const url = demo ? demoDatabaseUrl(root) : databaseUrl(root);
  const address = browserAddress(choice.port, host);
  const environment = serverEnvironment({ url, secret: readSecret(data), address, host });
  const { BETTER_AUTH_SECRET: secret, BETTER_AUTH_URL: publicAddress } = environment;
  const prepared = await prepare({ root, log, url }, demo ? () => makeDemo({ root, log, secret, address: publicAddress }) : undefined);
  if (!prepared) return 1;
  const started = await showProgress('Starting', () => serve({ root, log, host, port: choice.port, environment }));
  if (!started.ok) {
    reportFailure('Starting', started, log.file);
    return 1;
  }
  noteRunningServer(root, { pid: process.pid, address });
  console.log(welcome({ address, host, setupCode: environment.SANDBUCKET_SETUP_CODE, isNew: await asksForSchool(address) }));
  if (demo) console.log(demoSignIns(secret));
  await started.server.ended;
  forgetRunningServer(root);
  reportFailure('The server ended by itself: serving', { output: started.server.output() }, log.file);
  return 1;
}

/**
 * Takes every step that is needed before the program can be served.
 * @param {import('./install.mjs').Workplace & { url: string }} place
 * @param {() => Promise<import('./install.mjs').StepResult>} [demo] makes the demo school, when that is wanted
 * @returns {Promise<boolean>} false when one failed, which is reported here
 */
async function prepare(place, demo) {
  const steps = [
    { what: 'Installing packages', run: () => installWhenNeeded(place) },
    { what: 'Generating the database client', run: () => generateClients(place) },
    ...(demo ? [{ what: 'Making the demo school', run: () => showProgress('Making the demo school, up to a minute', demo) }] : []),
    { what: 'Preparing the database', run: () => showProgress('Preparing the database', () => prepareDatabase(place)) },
    { what: 'Building', run: () => buildWhenNeeded(place) },
  ];
  for (const { what, run } of steps) {
    const result = await run();
    if (!result.ok) {
      reportFailure(what, result, place.log.file);
      return false;
    }
  }
  return true;
}

/** @param {import('./install.mjs').Workplace} place */
async function buildWhenNeeded(place) {
  return isBuilt(place.root) ? { ok: /** @type {const} */ (true) } : showProgress('Building, about half a minute', () => build(place));
}

/** @param {string} reason */
function fail(reason) {
  console.error(reason);
  return 1;
}

/**
 * @param {number} code
 * @param {string} words
 */
function end(code, words) {
  console.error(words);
  process.exitCode = code;
}
