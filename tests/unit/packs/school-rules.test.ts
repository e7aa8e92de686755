import { describe, expect, it } from 'vitest';
import { checkInForce } from '@/lib/packs/checks/check-age';
import { needOf } from '@/lib/packs/pack-list';
import { adjustableLimits, limitsInForce } from '@/lib/packs/school-rules';
import { fieldOfLimit, readRulesPost } from '@/lib/packs/school-rules-input';
import { checkForTest, later, MONDAY, packForTest } from '@/tests/support/pack-for-tests';
import { secondLimits } from '@/tests/support/second-pack-limits';

const LIMITS = adjustableLimits(secondLimits);
const post = (given: Readonly<Record<string, string>>) => readRulesPost({ revision: 1, temperature: '°C', checkDays: '', ...given }, LIMITS, { packLimits: {} });
const figure = (limits: typeof secondLimits, id: string) => limits.rules.find((rule) => rule.id === id)?.value;

describe('a school’s own limits', () => {
  it('offer every figure with a range, and none that is fixed', () => {
    const fixed = secondLimits.rules.filter(({ schoolMay }) => schoolMay === undefined).map(({ id }) => id);
    expect(LIMITS.length).toBeGreaterThan(10);
    expect(LIMITS.filter(({ id }) => fixed.includes(id))).toEqual([]);
    expect(LIMITS.every(({ standing, range }) => standing >= range.min && standing <= range.max)).toBe(true);
  });

  it('are written over those of the content, and hold for a pack at once', () => {
    const own = limitsInForce(secondLimits, { packLimits: { spread: 0.05, storageCharge: 3.75 }, checkDays: 14 });
    expect([figure(own, 'spread'), own.storageCharge.target, own.checkDays]).toEqual([0.05, 3.75, 14]);
  });

  it('never make a limit looser, also when an edition narrowed it since', () => {
    const own = limitsInForce(secondLimits, { packLimits: { spread: 0.4, 'cell-low': 3.4, gone: 1 } });
    expect([figure(own, 'spread'), figure(own, 'cell-low')]).toEqual([figure(secondLimits, 'spread'), 3.4]);
  });

  it('are read from the form, where empty and the content’s own figure set nothing', () => {
    expect(post({ [fieldOfLimit('spread')]: '0,05', [fieldOfLimit('cell-low')]: '3.3', [fieldOfLimit('old')]: '', checkDays: '30' })).toEqual({ ok: true, rules: { packLimits: { spread: 0.05 }, checkDays: 30 } });
  });

  it('are refused at their field outside of the range, all at once', () => {
    const read = post({ [fieldOfLimit('spread')]: '0.4', [fieldOfLimit('old')]: 'soon', checkDays: '2.5' });
    expect(read.ok ? [] : read.faults.map(({ field }) => field)).toEqual([fieldOfLimit('spread'), fieldOfLimit('old'), 'checkDays'].sort((a, b) => LIMITS.findIndex(({ id }) => fieldOfLimit(id) === a) - LIMITS.findIndex(({ id }) => fieldOfLimit(id) === b)).filter((name) => name !== 'checkDays').concat('checkDays'));
  });
});

describe('the days a check counts', () => {
  const check = checkForTest(MONDAY);
  const held = { ...secondLimits, checkDays: 7 };

  it('end after the last of them, and never where the school has set none', () => {
    expect([checkInForce(held, check, later(24 * 7)), checkInForce(held, check, later(24 * 8)), checkInForce(secondLimits, check, later(24 * 800))]).toEqual([check, null, check]);
  });

  it('press in the list once they are over', () => {
    const listed = { pack: packForTest(), lastCheck: check, isolatedAt: null, isolatedSince: null };
    expect(needOf(held, listed, later(24 * 7))).toBeNull();
    expect(needOf(held, listed, later(24 * 9))).toEqual({ urgency: 'wait', words: 'Checked 9 days ago: check it again' });
  });
});
