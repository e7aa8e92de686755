import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayWidth } from '@/lib/report/text/display-width';
import { hanging, padded, wrap } from '@/lib/report/text/layout';

describe('the width of a text', () => {
  it.each([
    ['', 0], ['packs', 5], ['é', 1], ['e\u0301', 1], ['m³', 2], ['漢字', 4], ['ｶﾅ', 2], ['ＡＢ', 4], ['한글', 4],
    ['▲ High', 6], ['◐', 1], ['⬢', 1], ['🔋', 2], ['👩‍🏫', 2], ['🇯🇵', 2], ['a\u200db', 2],
  ])('%j takes %d columns', (text, columns) => {
    expect(displayWidth(text)).toBe(columns);
  });
});

describe('wrapped text', () => {
  it('breaks between words and loses nothing', () => {
    expect(wrap('The quick brown fox', 10)).toEqual(['The quick', 'brown fox']);
    expect(wrap('', 10)).toEqual(['']);
  });

  it('never has a line that is too wide, whatever it is made of', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 2, max: 40 }), (text, width) => {
      const lines = wrap(text, width);
      expect(lines.every((line) => displayWidth(line) <= width)).toBe(true);
      expect(lines.join('').replaceAll(/\s/g, '')).toBe(text.replaceAll(/\s/g, ''));
    }));
  });

  it('hangs beneath its first line', () => {
    const lines = hanging(' *  ', 'word '.repeat(30));
    expect(lines.every((line, at) => line.startsWith(at === 0 ? ' *  word' : '    word'))).toBe(true);
    expect(lines.length).toBe(2);
  });

  it('is filled up by columns, not by letters', () => {
    expect(padded('漢', 4)).toBe('漢  ');
    expect(padded('long already', 4)).toBe('long already');
  });
});
