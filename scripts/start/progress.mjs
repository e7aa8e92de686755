import { isStopping } from './children.mjs';

/** Without a terminal a long step says now and then that it is still at work. */
const HEARTBEAT_MS = 30_000;

/**
 * Shows that a step runs and, at its end, how long it took.
 * @template {{ ok: boolean }} Result
 * @param {string} title
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 */
export async function showProgress(title, work) {
  const begun = Date.now();
  const terminal = process.stdout.isTTY;
  const show = () => {
    if (!isStopping()) process.stdout.write(terminal ? `\r  ${title} … ${elapsed(begun)} ` : `  ${title} … ${elapsed(begun)}\n`);
  };
  if (terminal) show();
  else console.log(`  ${title} …`);
  const timer = setInterval(show, terminal ? 1000 : HEARTBEAT_MS);
  try {
    const result = await work();
    const end = `${result.ok ? '✓' : '✗'} ${title} (${elapsed(begun)})`;
    console.log(terminal ? `\r${end}          ` : end);
    return result;
  } finally {
    clearInterval(timer);
  }
}

/**
 * Returns the time since a moment, such as `0.4 s`, `12 s` or `2 min 5 s`.
 * @param {number} begunMs
 * @param {number} [nowMs]
 */
export function elapsed(begunMs, nowMs = Date.now()) {
  const seconds = (nowMs - begunMs) / 1000;
  if (seconds < 10) return `${seconds.toFixed(1)} s`;
  const whole = Math.round(seconds);
  return whole < 60 ? `${whole} s` : `${Math.floor(whole / 60)} min ${whole % 60} s`;
}
