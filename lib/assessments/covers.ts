import { isMoreEnergy } from '@/lib/core/battery/covered-energy';

/** What a signed assessment took for granted, and the same as it is now. */
export interface Covered { readonly packs: number; readonly storedWh: number; readonly sessions: number; readonly people: number }

export interface Drift { readonly what: keyof Covered; readonly covered: number; readonly now: number; readonly words: string }

const WORDS: Readonly<Record<keyof Covered, (covered: string, now: string) => string>> = {
  packs: (covered, now) => `The signed paper covers ${covered} packs, you have ${now}. Put the others aside, or have the officer sign a change before the next session.`,
  storedWh: (covered, now) => `The signed paper covers ${covered} Wh in the store, there are ${now} Wh. Take some away, or have the officer sign a change.`,
  sessions: (covered, now) => `The signed paper covers ${covered} sessions, this is number ${now}. Ask the officer before the next one.`,
  people: (covered, now) => `The signed paper covers ${covered} people in the room while packs charge, there were ${now}.`,
};

/** Where the register and the log have left what was signed. Nothing known is nothing said, never zero. */
export function drifted(covered: Covered, now: Partial<Covered>): readonly Drift[] {
  return (Object.keys(WORDS) as readonly (keyof Covered)[]).flatMap((what) => {
    const is = now[what];
    if (is === undefined || !isBeyond(what, is, covered[what])) return [];
    return [{ what, covered: covered[what], now: is, words: WORDS[what](shown(covered[what]), shown(is)) }];
  });
}

/** Whether there is more of a thing than a paper covers. */
export function isBeyond(what: keyof Covered, now: number, covered: number): boolean {
  return what === 'storedWh' ? isMoreEnergy(now, covered) : now > covered;
}

const shown = (value: number): string => String(Number(value.toFixed(1)));

export type Force = 'in force' | 'suspended' | 'run out' | 'review asked' | 'superseded' | 'not signed';

/**
 * Whether it holds on a day: signed, not suspended, not run out, nothing reported that contradicts it. Its last day counts to its end.
 * @param day of the school's own calendar, YYYY-MM-DD, as `until` is; null where no day was named
 */
export function forceOn(day: string, one: { readonly state: string; readonly suspended: boolean; readonly until: string | null; readonly reviewAsked: boolean }): Force {
  if (one.state === 'superseded') return 'superseded';
  if (one.state !== 'signed') return 'not signed';
  if (one.suspended) return 'suspended';
  if (one.until !== null && day > one.until) return 'run out';
  return one.reviewAsked ? 'review asked' : 'in force';
}
