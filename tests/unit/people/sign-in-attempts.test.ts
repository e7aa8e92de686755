import { describe, expect, it } from 'vitest';
import { judgeAttempt, TRIES_PER_WINDOW, waitInWords, WINDOW_MS } from '@/lib/people/sign-in-attempts';

const now = Date.UTC(2026, 10, 25, 12);
const tries = (count: number, ago: number) => Array.from({ length: count }, () => now - ago);

describe('judgeAttempt', () => {
  it('lets the tenth try within a quarter of an hour go on, not the eleventh', () => {
    expect(judgeAttempt(tries(TRIES_PER_WINDOW, 0), now)).toEqual({ ok: true });
    expect(judgeAttempt(tries(TRIES_PER_WINDOW + 1, 0), now)).toEqual({ ok: false, waitMs: WINDOW_MS });
  });

  it('forgets tries when they are a window old, and says how long that takes', () => {
    const times = [...tries(TRIES_PER_WINDOW, WINDOW_MS - 60_000), now];
    expect(judgeAttempt(times, now)).toEqual({ ok: false, waitMs: 60_000 });
    expect(judgeAttempt(times, now + 60_000)).toEqual({ ok: true });
  });
});

describe('waitInWords', () => {
  it('rounds up, so that nobody comes back too early', () => {
    expect(waitInWords(61_000)).toContain('Wait 2 minutes');
    expect(waitInWords(5)).toContain('Wait 1 minute,');
  });
});
