import { stopChildren } from './children.mjs';

/**
 * Ends everything in good order on Ctrl-C, on a request to end and when the terminal closes. A second signal changes
 * nothing: npm passes on the Ctrl-C that the terminal has already sent to all.
 * @param {{ beforeExit?: () => void, exitCode: number }} options
 */
export function stopOnSignals({ beforeExit, exitCode }) {
  let stopping = false;
  const stop = async () => {
    if (stopping) return;
    stopping = true;
    console.log('\nStopping …');
    await stopChildren();
    beforeExit?.();
    console.log('Stopped.');
    process.exit(exitCode);
  };
  for (const name of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) process.on(name, () => void stop());
}
