import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { quickScore } from '@/lib/core/quick-score';
import { effectOf, totalMoved } from '@/lib/assessments/effect';
import { notTaken } from '@/lib/assessments/import-input';
import { AssessmentQuerySchema, narrowed } from '@/lib/assessments/list';
import { exampleDocument } from '@/tests/support/version-for-tests';

describe('what a saved page changed', () => {
  const room = exampleDocument('ordinary-classroom');
  const before = quickScore(edition2, { ...room, answers: { ...room.answers, 'room-exits': 'one' } });
  const after = quickScore(edition2, { ...room, answers: { ...room.answers, 'room-exits': 'no' } });

  it('names the stop conditions that hold since, or hold no more', () => {
    expect(effectOf(before, after).raised.map(({ id }) => id)).toContain('no-way-out');
    expect(effectOf(after, before).cleared).toEqual(effectOf(before, after).raised);
    expect(effectOf(before, before)).toMatchObject({ cleared: [], raised: [], share: 1 });
  });
  it.each([
    [null, 'stays as it was'], [1, 'stays as it was'], [1.004, 'stays as it was'], [0.9, '10 % lower'], [1.25, '25 % higher'], [3, '3 times what it was'],
  ])('says a total of %s times what it was in words', (share, words) => { expect(totalMoved({ share })).toContain(words); });
});

describe('the list', () => {
  const row = { title: 'Room 14', siteName: 'Main building', season: '2026/27', preparedByName: 'Kim Marsh', state: 'draft' as const };
  const rows = [row, { ...row, title: 'Gym', state: 'superseded' as const }];
  it('leaves out what was replaced until it is asked for', () => {
    expect(narrowed(rows, AssessmentQuerySchema.parse({}))).toEqual([row]);
    expect(narrowed(rows, AssessmentQuerySchema.parse({ state: 'all' }))).toHaveLength(2);
    expect(narrowed(rows, AssessmentQuerySchema.parse({ state: 'superseded' })).map(({ title }) => title)).toEqual(['Gym']);
  });
  it('finds every word wherever it stands, and narrows nothing by an address it cannot read', () => {
    expect(narrowed(rows, AssessmentQuerySchema.parse({ q: 'MARSH 14' }))).toEqual([row]);
    expect(narrowed(rows, AssessmentQuerySchema.parse({ q: 'marsh 15' }))).toEqual([]);
    expect(AssessmentQuerySchema.parse({ q: ['a', 'b'], state: 'nonsense' })).toEqual({ q: '', state: 'current' });
  });
});

describe('a file to begin from', () => {
  const only = { format: 'sandbucket-assessment.v1' as const, id: 'a', title: 'A', answers: {} };
  it('tells what of it stays behind', () => {
    expect(notTaken(only)).toEqual([]);
    expect(notTaken({ ...only, inputs: {}, planned: [] })).toEqual([]);
    expect(notTaken({ ...only, inputs: { packs: 3 }, seed: 7 })).toEqual(['figures written over the answers', 'a seed of its own']);
  });
});
