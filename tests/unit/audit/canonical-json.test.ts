import { describe, expect, it } from 'vitest';
import { canonicalJson } from '@/lib/audit/canonical-json';

describe('canonicalJson', () => {
  it('writes the same text whatever the order of the names, and none of the spaces', () => {
    expect(canonicalJson({ b: [1, { d: null, c: true }], a: 'x' })).toBe('{"a":"x","b":[1,{"c":true,"d":null}]}');
  });

  it('orders names by their UTF-16 code units', () => {
    // The names of the example of RFC 8785, 3.2.3 (from memory): a supplementary character stands before U+FB33.
    const names = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const text = canonicalJson(Object.fromEntries(names.map((name) => [name, 0])));
    expect(Object.keys(JSON.parse(text) as object).filter((name) => name !== '1')).toEqual(['\r', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33']);
    expect(text.indexOf('"\\r"')).toBeLessThan(text.indexOf('"1"'));
  });

  it('writes numbers as ECMAScript does', () => {
    expect(canonicalJson([1e21, 1e-7, -0, 0.1, 4294967295])).toBe('[1e+21,1e-7,0,0.1,4294967295]');
  });

  it.each([
    ['undefined', { a: undefined }], ['not a number', Number.NaN], ['infinity', [Infinity]], ['a big integer', 1n],
    ['a date', new Date(0)], ['a map', new Map()], ['half a pair', '\ud83d'], ['half a pair as a name', { '\ude00': 1 }],
  ])('refuses %s', (_, value) => {
    expect(() => canonicalJson(value)).toThrow('Not a JSON value');
  });
});
