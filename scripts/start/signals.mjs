import { stopChildren } from './children.mjs';

const LOOK_FOR_PARENT_MS = 300;

/**
 * Ends everything in good order on Ctrl-C, on a request to end, when the terminal closes and when the parent is gone.
 * A second signal changes nothing: npm passes on the Ctrl-C that the terminal has already sent to all.
 *
 * npm hands a request to end only to the shell it starts this program with, and that shell dies of it alone; hence the
 * look at the parent. Outside of npm a changed parent is nothing unusual: somebody sent the program to the background.
 * @param {{ beforeExit?: () => void, exitCode: number, endWithParent?: boolean }} options
 */
export function stopOnSignals({ beforeExit, exitCode, endWithParent = Boolean(process.env.npm_lifecycle_event) }) {
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
  if (endWithParent) whenParentIsGone(() => void stop());
}

/** @param {() => void} act */
function whenParentIsGone(act) {
  const parent = process.ppid;
  const timer = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(timer);
    act();
  }, LOOK_FOR_PARENT_MS);
  timer.unref();
}
