import { describe, expect, it } from 'vitest';
import { contentByEdition, contentByVersion, currentContent, editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import { asContent } from '@/lib/content/schema';
import { canonicalJson, type JsonValue } from '@/lib/interchange/canonical-json';
import { fingerprint } from '@/lib/interchange/fingerprint';

/** What was published. A line is added for a new edition; none is ever changed. */
const PUBLISHED: Readonly<Record<number, { readonly version: string; readonly sha256: string }>> = {
  1: { version: '0.1.0', sha256: '28b45591feaa7c254b271e815af37ebd5c3d425bddde2a7b201cf0d6c137d952' },
  2: { version: '2.0.0', sha256: '27cfe76a516a919e4eb94687140a977ed6aafa47968b6b167272797529e606b8' },
};

const KEY_ORDER = [
  'format', 'version', 'note', 'ranges', 'groups', 'controls', 'moneyBands', 'effortRule', 'severityScale', 'harmWeights', 'matrices',
  'inputs', 'exposures', 'scenarios', 'physics', 'constants', 'models', 'aegl', 'idlh', 'reentry', 'smokeRule', 'heatRule',
  'packCountRule', 'packLimits', 'defaultEffortBudget', 'stateRules', 'sections', 'questions', 'stops',
];

const asJson = (content: Content): JsonValue => JSON.parse(JSON.stringify(content)) as JsonValue;

describe('a published edition', () => {
  it.each(editions)('number $edition is what it was when it was published', ({ edition, content }) => {
    expect({ version: content.version, sha256: fingerprint(asJson(content)) }).toEqual(PUBLISHED[edition]);
  });

  it('is known by its version and by its number', () => {
    expect(contentByVersion('0.1.0')).toBe(editions[0].content);
    expect(contentByEdition(1)).toBe(editions[0].content);
    expect(contentByVersion('9.9.9')).toBeUndefined();
    expect(contentByEdition(0)).toBeUndefined();
  });

  it('keeps versions apart and the last one is in force', () => {
    expect(new Set(editions.map(({ content }) => content.version)).size).toBe(editions.length);
    expect(currentContent).toBe(editions.at(-1)?.content);
  });

  it('is printed in the order of its first document', () => {
    expect(Object.keys(editions[0].content)).toEqual(KEY_ORDER);
  });

  it('has the size it was written with', () => {
    const { controls, scenarios, questions, stops, inputs, sections } = editions[0].content;
    const branches = scenarios.flatMap((scenario) => scenario.branches);
    expect([controls.length, scenarios.length, branches.length, questions.length, stops.length, inputs.length, sections.length])
      .toEqual([71, 18, 70, 74, 19, 59, 11]);
  });
});

describe('the shape of an edition', () => {
  it('lets a copy through unchanged', () => {
    expect(canonicalJson(asJson(asContent(asJson(currentContent))))).toBe(canonicalJson(asJson(currentContent)));
  });

  it.each<[string, (copy: Record<string, unknown>) => void]>([
    ['a key nobody knows', (copy) => { copy['extra'] = 1; }],
    ['a missing list', (copy) => { delete copy['stops']; }],
    ['a number that is text', (copy) => { copy['defaultEffortBudget'] = '12'; }],
    ['a physics id nobody uses', (copy) => { (copy['physics'] as { id: string }[])[0]!.id = 'warmth'; }],
    ['a condition with two shapes', (copy) => { (copy['stops'] as { when: object }[])[0]!.when = { control: 'a', in: ['absent'], input: 'b' }; }],
  ])('refuses %s', (_, spoil) => {
    const copy = asJson(currentContent) as unknown as Record<string, unknown>;
    spoil(copy);
    expect(() => asContent(copy)).toThrow();
  });
});
