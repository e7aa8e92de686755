import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from '@/lib/interchange/json/read-json';

const READ = (text: string): unknown => {
  const read = readJson(text);
  return read.readable ? { value: read.value, faults: read.faults.map(({ path, problem }) => `${path} ${problem}`) } : `${read.fault.path} ${read.fault.problem}; ${read.fault.expected}`;
};

describe('JSON', () => {
  it('is read as JSON.parse reads it, whatever it holds', () => {
    fc.assert(fc.property(fc.json({ maxDepth: 6 }), (text) => {
      fc.pre(!text.includes('__proto__'));
      expect(READ(text)).toEqual({ value: JSON.parse(text) as unknown, faults: [] });
    }), { numRuns: 300 });
  });

  it('with white space, escapes and a byte order mark is read too', () => {
    expect(READ('\ufeff { "a\\n\\u00e9" : [ 1 , -0.5e+2 ,true, null ] }\r\n')).toEqual({ value: { 'a\né': [1, -50, true, null] }, faults: [] });
  });

  it('is told apart from what JSON.parse refuses, always', () => {
    fc.assert(fc.property(fc.string({ unit: fc.constantFrom(...'{}[]",:0123.eE+-ntrualsf \n\\x/\u0001') }), (text) => {
      let parses = true;
      try { JSON.parse(text); } catch { parses = false; }
      const read = readJson(text);
      expect(read.readable && read.faults.length === 0).toBe(parses && !hasTwins(text) && Number.isFinite(largest(text)));
    }), { numRuns: 2000 });
  });

  it.each([
    ['', '$ is empty; a JSON document, { … }'],
    [' \n', '$ is empty; a JSON document, { … }'],
    ['{"a": 1\n "b": 2}', '$ line 2, column 2: "\\"" cannot stand here; a comma between two entries, or } at the end'],
    ["{'a': 1}", '$ line 1, column 2: "\'" cannot stand here; a name in double quotes; no comma after the last entry'],
    ['[1,]', '$ line 1, column 4: "]" cannot stand here; text in double quotes, a number, true, false, null, { or ['],
    ['[1', '$ line 1, column 3: the document ends too early; a comma between two entries, or ] at the end'],
    ['{"a" 1}', '$ line 1, column 6: "1" cannot stand here; a colon after the name "a"'],
    ['{"a": yes}', '$ line 1, column 7: "yes" cannot stand here; text in double quotes, a number, true, false, null, { or ['],
    ['{"a": 012}', '$ line 1, column 8: a number goes on where it should end; a number such as 12 or 0.5, without a leading zero'],
    ['{"a": "b', '$ line 1, column 7: text in quotes does not end; a closing double quote'],
    ['{"a": "b\nc"}', '$ line 1, column 9: a line break or another control character stands in text; a closing double quote, or \\n'],
    ['{"a": "\\d"}', '$ line 1, column 8: a backslash with a sign after it that JSON does not know; \\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four digits'],
    ['{} {}', '$ line 1, column 4: there is something after the end of the document; nothing after the last bracket'],
    ['{"a": 1 /* one */}', '$ line 1, column 9: "/" cannot stand here; a comma between two entries, or } at the end'],
    [`${'['.repeat(40)}${']'.repeat(40)}`, '$ line 1, column 34: lists and objects lie too deep inside each other; at most 32 deep'],
    [`"${'x'.repeat(500_000)}"`, '$ has 500,002 characters; at most 500,000'],
  ])('that cannot be read is said where: %.40j', (text, expected) => {
    expect(READ(text)).toBe(expected);
  });

  it('that can be got over is read on', () => {
    expect(READ('{"a": NaN, "b": [1e999, -Infinity], "c": 1, "c": 2, "__proto__": {"d": 1}}')).toEqual({
      value: { a: Number.NaN, b: [Number.NaN, Number.NaN], c: 1 },
      faults: [
        '$.a is NaN, which JSON does not have', '$.b[0] is a number too large to be held', '$.b[1] is -Infinity, which JSON does not have',
        '$.c is given more than once', '$.__proto__ is a name that no document may use',
      ],
    });
  });
});

function hasTwins(text: string): boolean {
  const read = readJson(text);
  return read.readable && read.faults.some(({ problem }) => problem === 'is given more than once');
}

function largest(text: string): number {
  return Math.max(0, ...(text.match(/\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/g) ?? []).map(Number));
}
