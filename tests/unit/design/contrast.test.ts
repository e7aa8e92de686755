import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastRatio, luminance } from '@/tests/support/contrast-ratio';
import { expectWithin } from '@/tests/support/expect-within';

const css = readFileSync(new URL('../../../app/styles/tokens.css', import.meta.url), 'utf8');
const THEMES = ['light', 'dark'] as const;

interface Pair { readonly light: string; readonly dark: string }
const tokens = new Map([...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(([, name = '', light = '', dark = '']): [string, Pair] => [name, { light, dark }]));

function token(name: string): Pair {
  const pair = tokens.get(name);
  if (pair === undefined) throw new Error(`tokens.css has no --${name}`);
  return pair;
}

const GROUNDS = ['sheet', 'ground', 'well', 'raised'];
const GRADES = ['low', 'moderate', 'high', 'extreme'];
const on = (front: string, grounds: readonly string[]): readonly (readonly [string, string])[] => grounds.map((ground) => [front, ground] as const);

const TEXT = [
  ...on('ink', [...GROUNDS, 'ember-wash']),
  ...on('ink-2', [...GROUNDS, 'ember-wash']),
  ...on('ember', [...GROUNDS, 'ember-wash']),
  ['on-ink', 'ink'], ['on-ember', 'ember'], ['on-alarm', 'alarm'],
  ...[...GRADES, 'none'].map((grade) => [`on-c-${grade}`, `c-${grade}`] as const),
] as const;
const CONTROLS = [...['edge', 'grain', 'rule', ...GRADES.map((grade) => `g-${grade}`)].flatMap((front) => on(front, GROUNDS)), ['ember', 'c-low'], ['ink', 'c-moderate']] as const;

describe('the contrast formula', () => {
  // REFERENCES CK-31, CALC against the limit of WCAG 1.4.3 (READ-P)
  it.each([['#767676', 4.54], ['#777777', 4.48], ['#000000', 21]])('gives %s on white %d', (colour, expected) => {
    expectWithin(contrastRatio(colour, '#ffffff'), expected, { abs: 0.005 });
  });

  it('does not mind which colour is named first', () => {
    expect(contrastRatio('#123456', '#fedcba')).toBe(contrastRatio('#fedcba', '#123456'));
  });

  it('refuses what is not a colour of six digits', () => {
    expect(() => luminance('#fff')).toThrow('not a colour');
  });
});

describe.each(THEMES)('the %s theme', (theme) => {
  it.each(TEXT)('lets %s be read on %s, at least 4.5', (front, ground) => {
    expect(contrastRatio(token(front)[theme], token(ground)[theme])).toBeGreaterThanOrEqual(4.5);
  });

  it.each(CONTROLS)('lets %s be seen on %s, at least 3', (front, ground) => {
    expect(contrastRatio(token(front)[theme], token(ground)[theme])).toBeGreaterThanOrEqual(3);
  });
});

describe('the tokens', () => {
  it('give browsers without light-dark() the light theme, colour by colour', () => {
    const plain = new Map([...css.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name = '', colour = '']): [string, string] => [name, colour]));
    expect(Object.fromEntries(plain)).toEqual(Object.fromEntries([...tokens].map(([name, pair]) => [name, pair.light])));
  });

  it('darken the grade marks step by step in the light theme, so that they are ordered without colour', () => {
    const marks = GRADES.map((grade) => luminance(token(`g-${grade}`).light));
    expect(marks).toEqual([...marks].sort((a, b) => b - a));
    expect(new Set(marks).size).toBe(GRADES.length);
  });
});
