import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { assessmentJsonSchema } from '@/lib/interchange/json-schema';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { smallDocument, venueDocument } from '@/tests/support/assessment-text';

const FILE = 'public/schema/sandbucket-assessment.v1.schema.json';
const parse = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));
const validate = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true, formats: { date: true } }).compile(parse(FILE) as object);

describe('the published JSON Schema', () => {
  it('is what `npm run schema` writes', () => {
    expect(readFileSync(FILE, 'utf8')).toBe(assessmentJsonSchema());
  });

  it.each(['good-hall', 'ordinary-classroom', 'bad-store'])('accepts the example %s', (venue) => {
    expect(validate(parse(`public/examples/${venue}.json`)) || validate.errors).toBe(true);
  });

  it('accepts the venue that uses every scored part', () => {
    expect(validate(venueDocument('everything')) || validate.errors).toBe(true);
  });

  it.each<[string, Record<string, unknown>]>([
    ['a name nobody knows', { colour: 'red' }],
    ['no title', { title: undefined }],
    ['another format', { format: 'sandbucket-assessment.v2' }],
    ['a seed that is not whole', { seed: 1.5 }],
    ['an event and a half', { record: { 'charge-runaway': { events: 1.5, exposure: 3 } } }],
    ['exposure of nothing', { record: { 'charge-runaway': { events: 1, exposure: 0 } } }],
    ['a state nobody has', { states: { sprinkler: 'there' } }],
    ['a full name', { preparedBy: 'Karl Meyer-Lindenberg' }],
    ['the 30th of February', { preparedOn: '2026-02-30' }],
    ['a row of four grades', { matrix: { title: 'x', from: [0, 1], words: ['a', 'b'], cells: [['low', 'low', 'low', 'low'], ['low', 'low', 'low', 'low', 'low']] } }],
  ])('refuses %s, as the app does', (_, changes) => {
    const text = JSON.stringify(smallDocument(changes));
    expect(validate(JSON.parse(text))).toBe(false);
    expect(readAssessment(text).ok).toBe(false);
  });
});
