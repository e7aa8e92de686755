import { describe, expect, it } from 'vitest';
import { dialAddress } from '@/lib/wording/telephone';

describe('what a telephone dials', () => {
  it.each([
    ['000', 'tel:000'],
    [' 555 01 00 ', 'tel:5550100'],
    ['(02) 5550-100', 'tel:025550100'],
    ['+44 (0)20 555 0100', 'tel:+44205550100'],
    ['+1.555.010.0100', 'tel:+15550100100'],
  ])('is %s without its signs', (text, address) => { expect(dialAddress(text)).toBe(address); });

  it.each(['', '12', '000 or 555 0100', '555 0100 (gate 2)', 'on the card by the door', '1+1555'])('is nothing for %j', (text) => { expect(dialAddress(text)).toBeNull(); });
});
