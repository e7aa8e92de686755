import 'server-only';
import { removeWhatIsDue } from '@/lib/db/retention/remove-due';
import { sweepSignIns } from '@/lib/db/retention/sweep';
import { DAY_MS } from '@/lib/units/time';
import { database } from '../database';

const EVERY_MS = DAY_MS;

/** Takes away what is due, now and every day as long as the program runs. A failure is logged and tried again the next day. */
export function keepHouse(): void {
  const once = (): void => {
    takeAway(new Date()).catch((error: unknown) => console.error('Taking away what is due did not work; it is tried again in a day:', error));
  };
  once();
  // The program may end without waiting for it.
  setInterval(once, EVERY_MS).unref();
}

async function takeAway(now: Date): Promise<void> {
  await sweepSignIns(database(), now);
  await removeWhatIsDue(database(), now);
}
