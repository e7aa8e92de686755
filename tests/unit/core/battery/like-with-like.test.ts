import { describe, expect, it } from 'vitest';
import { type ResistanceReading, resistanceRatio } from '@/lib/core/battery/resistance-ratio';
import { warmthAtRest } from '@/lib/core/battery/warmth-at-rest';
import { secondCheck, secondLimits } from '@/tests/support/second-pack-limits';

describe('resistanceRatio', () => {
  const first: ResistanceReading = { milliohms: 8.2, temperature: 22, cellVoltage: 3.8 };
  const ratio = (change: Partial<ResistanceReading>, from = first) => resistanceRatio({ ...first, ...change }, from, secondCheck.alike);
  const reason = (result: ReturnType<typeof ratio>): string => (result.ok ? '' : result.reason);

  it('is now over first, exact where a limit stands', () => {
    // worked out by hand: 12.3 / 8.2
    expect(ratio({ milliohms: 12.3 })).toEqual({ ok: true, value: 1.5 });
  });
  // bounds of the content: our judgement
  it('is compared up to the bounds, which are 5 K and 0.1 V a cell', () => {
    expect([ratio({ temperature: 27 }).ok, ratio({ temperature: 17 }).ok, ratio({ cellVoltage: 3.9 }).ok, ratio({ cellVoltage: 3.7 }).ok]).toEqual([true, true, true, true]);
  });
  it('does not retire cold packs in winter', () => expect(reason(ratio({ milliohms: 20, temperature: 16.9 }))).toBe('resistance not compared: temperature differs by more than 5 K from the first check'));
  it('is not compared between full and empty', () => expect(reason(ratio({ cellVoltage: 4.1 }))).toContain('cell voltage differs by more than 0.1 V a cell'));
  it('is not compared when the conditions were not noted', () => {
    expect(reason(ratio({ temperature: null }))).toContain('temperature was not noted');
    expect(reason(ratio({}, { ...first, cellVoltage: null }))).toContain('cell voltage was not noted');
  });
  it.each([0, -1, Number.NaN])('is not made of %f milliohms', (milliohms) => {
    expect([ratio({ milliohms }).ok, ratio({}, { ...first, milliohms }).ok]).toEqual([false, false]);
  });
});

describe('warmthAtRest', () => {
  const warmth = (pack: number, room: number, hoursSinceUse: number | null) => warmthAtRest(secondLimits, { pack, room, hoursSinceUse });
  it('is pack minus room, exact where a limit stands', () => {
    expect(warmth(30.3, 20.3, 5)).toEqual({ ok: true, value: 10 });
    expect(warmth(18, 21, 5)).toEqual({ ok: true, value: -3 });
  });
  it('is no figure while the pack still rests from a flight', () => {
    expect([warmth(40, 20, 0.32).ok, warmth(40, 20, 0.33).ok]).toEqual([false, true]);
  });
  it('counts against the pack when nobody knows when it flew', () => expect(warmth(40, 20, null)).toEqual({ ok: true, value: 20 }));
});
