import { describe, expect, it } from 'vitest';
import { coClass, hfClass } from '@/lib/core/smoke/gas-class';
import type { Minutes, PartsPerMillion } from '@/lib/units/quantity';
import { of } from '@/lib/units/quantity';
import { model } from '@/tests/support/physics';

const hf = (ppm: number, minutes = 2): number => hfClass(model, of<PartsPerMillion>(ppm), of<Minutes>(minutes));
const co = (ppm: number, dose = 0, minutes = 2): number => coClass(model, of<PartsPerMillion>(ppm), of<Minutes>(minutes), dose);

describe('hfClass', () => {
  // smokeRule; a threshold is reached at its value
  it.each([[0, 1], [0.999, 1], [1, 2], [29.99, 2], [30, 3], [94.99, 3], [95, 4], [169.99, 4], [170, 5]])('of %f ppm for two minutes is %i', (ppm, severity) => {
    expect(hf(ppm)).toBe(severity);
  });
  it('takes the highest class reached where AEGL-2 has fallen below IDLH, after some 38 minutes', () => {
    expect([hf(29, 37), hf(29, 42), hf(24, 60), hf(23.9, 60)]).toEqual([2, 4, 4, 2]);
  });
});

describe('coClass', () => {
  it.each([[0, 1], [209.9, 1], [210, 2], [419.9, 2], [420, 3], [1199, 3], [1200, 4], [1700, 4]])('of %f ppm with no dose to speak of is %i', (ppm, severity) => {
    expect(co(ppm)).toBe(severity);
  });
  it('is 4 from the dose alone and 5 with AEGL-3 as well', () => {
    expect([co(100, 0.29), co(100, 0.3), co(1700, 0.29), co(1700, 0.3)]).toEqual([1, 4, 4, 5]);
  });
  it('is 4 from AEGL-3 where that is lower than IDLH', () => {
    expect([co(599, 0, 30), co(600, 0, 30)]).toEqual([3, 4]);
  });
});
