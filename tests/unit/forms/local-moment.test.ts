import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localOfMoment, momentOfLocal } from '@/lib/forms/local-moment';

const iso = (text: string, zone: string) => momentOfLocal(text, zone)?.toISOString() ?? null;

describe('a local date and time', () => {
  it.each([
    ['2026-11-25T15:48', 'UTC', '2026-11-25T15:48:00.000Z'],
    ['2026-11-25T15:48', 'Europe/London', '2026-11-25T15:48:00.000Z'],
    ['2026-07-25T15:48', 'Europe/London', '2026-07-25T14:48:00.000Z'],
    ['2026-11-25T15:48', 'Australia/Adelaide', '2026-11-25T05:18:00.000Z'],
    ['2026-11-25T00:05', 'Pacific/Auckland', '2026-11-24T11:05:00.000Z'],
    ['2026-11-25T23:59', 'America/Los_Angeles', '2026-11-26T07:59:00.000Z'],
  ])('%s in %s is %s', (text, zone, moment) => { expect(iso(text, zone)).toBe(moment); });

  it('that comes twice in autumn is the first of the two', () => { expect(iso('2026-10-25T01:30', 'Europe/London')).toBe('2026-10-25T00:30:00.000Z'); });

  it('that is left out in spring is read as before the change', () => { expect(iso('2026-03-29T01:30', 'Europe/London')).toBe('2026-03-29T01:30:00.000Z'); });

  it.each(['', 'yesterday', '2026-02-30T10:00', '2026-13-01T10:00', '2026-11-25T24:00', '2026-11-25'])('%j is none', (text) => { expect(iso(text, 'UTC')).toBeNull(); });

  it('leads from a moment and back to it in every zone, to the minute, but for the hour that comes twice', () => {
    fc.assert(fc.property(fc.date({ min: new Date('2000-01-01'), max: new Date('2050-01-01'), noInvalidDate: true }), fc.constantFrom('Europe/Berlin', 'America/St_Johns', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'UTC'), (at, zone) => {
      const local = localOfMoment(at, zone);
      expect(localOfMoment(momentOfLocal(local, zone) ?? new Date(0), zone)).toBe(local);
    }));
  });
});
