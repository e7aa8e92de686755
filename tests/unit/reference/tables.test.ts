import { describe, expect, it } from 'vitest';
import { AIR_CARRIAGE } from '@/lib/reference/air-carriage';
import { REST_VOLTAGE } from '@/lib/reference/rest-voltage';

describe('REST_VOLTAGE', () => {
  // REFERENCES F.1 (READ-S): 21 points, one each 5 %
  it('has 21 points from 0 to 100 % in steps of 5', () => {
    expect(REST_VOLTAGE.map(({ charge }) => charge)).toEqual(Array.from({ length: 21 }, (_, index) => index * 5));
  });
  it('holds the voltages of the table', () => {
    expect(REST_VOLTAGE.map(({ volts }) => volts).reverse()).toEqual([
      4.2, 4.15, 4.11, 4.08, 4.02, 3.98, 3.95, 3.91, 3.87, 3.85, 3.84, 3.82, 3.8, 3.79, 3.77, 3.75, 3.73, 3.71, 3.69, 3.61, 3.27,
    ]);
  });
});

describe('AIR_CARRIAGE', () => {
  // REFERENCES F.2: TSA (READ-P), FAA (READ-C)
  it('holds the limits of the rules', () => {
    expect(AIR_CARRIAGE).toEqual({ freeUpTo: 100, approvalUpTo: 160, sparesWithApproval: 2 });
  });
});
