import { describe, expect, it } from 'vitest';
import { canonicalJson } from '@/lib/interchange/canonical-json';
import { fingerprint } from '@/lib/interchange/fingerprint';
import { seedFromHash } from '@/lib/interchange/input-hash';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { smallDocument, venueDocument } from '@/tests/support/assessment-text';

const hashOf = (document: Record<string, unknown>): string => {
  const read = readAssessment(JSON.stringify(document));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.inputHash;
};
const everything = venueDocument('everything');
const withPart = (name: string, change: Record<string, unknown>) => ({ ...everything, [name]: { ...(everything[name] as object), ...change } });

describe('canonical JSON', () => {
  // RFC 8785 section 3.2.3 (from memory): keys by UTF-16 code units, so the surrogate pair stands before U+FB33
  it('sorts keys by code units', () => {
    const value = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\ud83d\ude00': 5, '\u0080': 6, '\u00f6': 7 };
    expect(Object.values(JSON.parse(canonicalJson(value)) as object).sort()).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect([...canonicalJson(value).matchAll(/:(\d)/g)].map(([, digit]) => digit)).toEqual(['2', '4', '6', '7', '1', '5', '3']);
  });

  it('spells numbers in one way and leaves out what has no value', () => {
    expect(canonicalJson({ b: [1.0, 1e21, 1e-7, -0], a: undefined, c: null })).toBe('{"b":[1,1e+21,1e-7,0],"c":null}');
  });

  it('has no word for what is no number', () => {
    expect(() => canonicalJson([Number.NaN])).toThrow('JSON cannot hold NaN');
    expect(() => canonicalJson([Infinity])).toThrow();
  });
});

// FIPS 180-4 example values for SHA-256 of "" and "abc" (from memory) do not have the quotes JSON puts around
// text; these two were computed with another implementation (Python hashlib) over the quoted text
it.each([['', '12ae32cb1ec02d01eda3581b127c1fee3b0dc53572ed6baf239721a03d82e126'], ['abc', '6cc43f858fbb763301637b5af970e2a46b46f461f27e5a0f41e009c59b827b25']])(
  'the fingerprint of %j is SHA-256', (text, expected) => {
    expect(fingerprint(text)).toBe(expected);
  });

describe('the hash of the scored parts', () => {
  const hash = hashOf(everything);

  it.each<[string, Record<string, unknown>]>([
    ['title and id', { ...everything, id: 'other', title: 'Other' }],
    ['notes, school and preparer', { ...everything, notes: { 'room-size': 'measured' }, school: 'Tern Lane', preparedBy: 'K. M.' }],
    ['the seed', { ...everything, seed: 8 }],
    ['a reason', withPart('states', { sprinkler: { state: 'not applicable', reason: 'none in this building' } })],
    ['the edition in force, named', { ...everything, contentVersion: '0.1.0' }],
    ['the default matrix, named', { ...everything, matrix: 'five-by-five' }],
    ['the order of the plan', { ...everything, planned: [...(everything['planned'] as string[])].reverse() }],
    ['the order of ticks', withPart('answers', { 'arena-kit': ['walk', 'line', 'glasses', 'cage'] })],
    ['the order of everything', Object.fromEntries(Object.entries(everything).reverse())],
    ['a part with nothing in it', { ...everything, notSureTicks: { ...(everything['notSureTicks'] as object), 'store-keep': [] } }],
  ])('does not change with %s', (_, document) => {
    expect(hashOf(document)).toBe(hash);
  });

  it.each<[string, Record<string, unknown>]>([
    ['an answer', withPart('answers', { 'table-surface': 'no' })],
    ['a number', withPart('answers', { 'room-size': { chargingVolume: 181 } })],
    ['a tick not known', withPart('notSureTicks', { 'store-keep': ['cool'] })],
    ['an exposure', withPart('exposures', { handlings: 15001 })],
    ['an input', withPart('inputs', { crashShare: 0.26 })],
    ['a state', withPart('states', { sprinkler: 'absent' })],
    ['the record', withPart('record', { 'rotor-strike': { events: 1, exposure: 2900 } })],
    ['the plan', { ...everything, planned: ['outdoor-spot'] }],
    ['the budget', { ...everything, effortBudget: 9 }],
    ['the matrix', { ...everything, matrix: 'three-by-three' }],
  ])('changes with %s', (_, document) => {
    expect(hashOf(document)).not.toBe(hash);
  });

  it('does not change with the order of lines or with the edition a document was written for, and changes with a line', () => {
    const lines = (answer: Record<string, string>, contentVersion?: string) => hashOf(smallDocument({ contentVersion, answers: { 'people-kit': answer } }));
    expect(lines({ tidy: 'partly', caps: 'yes' })).toBe(lines({ caps: 'yes', tidy: 'partly' }));
    expect(lines({ caps: 'yes' }, '0.1.0')).toBe(lines({ caps: 'yes' }));
    expect(lines({ caps: 'partly' })).not.toBe(lines({ caps: 'yes' }));
    expect(lines({ caps: 'yes', tidy: 'not sure' })).not.toBe(lines({ caps: 'yes' }));
  });

  it('keeps "nothing ticked" and "not answered" apart', () => {
    expect(hashOf(smallDocument({ answers: { 'people-kit': [] } }))).not.toBe(hashOf(smallDocument()));
  });
});

describe('the seed', () => {
  it('is the first 32 bits of the hash', () => {
    expect(seedFromHash(`00000001${'0'.repeat(56)}`)).toBe(1);
    expect(seedFromHash(`ffffffff${'0'.repeat(56)}`)).toBe(4_294_967_295);
  });

  it('cannot be taken from something else', () => {
    expect(() => seedFromHash('not a hash')).toThrow();
  });
});
