import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { mayRelease, type ReleaseRequest } from '@/lib/core/battery/may-release';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { secondCheck, secondLimits as limits, soundPack } from '@/tests/support/second-pack-limits';

const check = (change: PackMeasures) => packVerdict(limits, { ...soundPack, ...change });
const good: ReleaseRequest = { by: 'safety-officer', cause: 'nearby', reason: 'lay in the next box, box unharmed', hoursApart: 24, firedSince: [], check: check({}) };
const against = (change: Partial<ReleaseRequest>): string => {
  const result = mayRelease(limits, { ...good, ...change });
  return result.ok ? '' : result.reason;
};

describe('mayRelease', () => {
  it('lets a pack go that was only nearby, with a sound check, a day apart and a reason', () => {
    expect(mayRelease(limits, good)).toEqual({ ok: true, value: secondCheck.release.words });
  });
  it.each<[string, Partial<ReleaseRequest>, string]>([
    ['somebody else asks', { by: 'coach' }, 'only the safety officer'],
    ['it was isolated for itself', { cause: 'check' }, 'only a pack that was nearby'],
    ['there is no reason', { reason: '  ' }, 'reason in writing'],
    ['a day has not passed', { hoursApart: 23.9 }, 'apart for 24 h'],
    ['nobody knows how long it lay apart', { hoursApart: null }, 'apart for 24 h'],
    ['there is no check', { check: null }, 'check is wanted'],
    ['nobody looked', { check: packVerdict(limits, {}) }, 'check is wanted'],
    ['the check is not complete', { check: check({ smell: undefined }) }, 'not complete'],
    ['the check shows a sign', { check: check({ temperatureRise: 6 }) }, 'the check shows: at rest'],
    ['a rule fired that nobody knows', { firedSince: ['colour'] }, 'never released after: colour'],
  ])('refuses when %s', (_, change, words) => expect(against(change)).toContain(words));

  it.each(limits.rules.filter(({ verdict }) => verdict === 'leave' || verdict === 'isolate').map(({ id }) => id))('never lets a pack go that was %s', (id) => {
    expect(against({ firedSince: [id] })).toContain('never released after');
  });
  it('lets age and the weather be', () => {
    expect(against({ check: check({ ageMonths: 40, cycles: 400, ambientTemperature: 2 }), firedSince: ['old', 'spread'] })).toBe('');
  });
  it('names every reason at once', () => {
    expect(against({ by: 'coach', reason: '', firedSince: ['swollen'] }).split('; ')).toHaveLength(3);
  });
  it('is unknown to the first edition', () => {
    expect(mayRelease(edition1.packLimits, good)).toEqual({ ok: false, reason: 'this edition has no release from isolation' });
  });
});
