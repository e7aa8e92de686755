import { expect, it } from 'vitest';
import { nearest } from '@/lib/questionnaire/nearest';

const KNOWN = ['charge-box', 'charge-bag', 'charges', 'charge-runaway', 'exits'];

it.each([
  ['charge-box', 'charge-box'],
  ['chargebox', 'charge-box'],
  ['Charge-Bag', 'charge-bag'],
  ['charge-runawy', 'charge-runaway'],
  ['charge', 'charges'],
  ['exist', undefined],
  ['exit', 'exits'],
  ['windows', undefined],
  ['', undefined],
  ['x'.repeat(100_000), undefined],
])('%.20s probably means %s', (name, meant) => {
  expect(nearest(name, KNOWN)).toBe(meant);
});
