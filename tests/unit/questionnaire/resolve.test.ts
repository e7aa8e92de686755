import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Answer } from '@/lib/core/document';
import { emptyDocument } from '@/lib/questionnaire/empty-document';
import { resolve } from '@/lib/questionnaire/resolve';

type Answers = Readonly<Record<string, Answer>>;
const answersOf = (venue: string): Answers =>
  (JSON.parse(readFileSync(`tests/reference-data/${venue}.json`, 'utf8')) as { answers: Answers }).answers;

const INDOOR = ['room-size', 'room-air'];
const BY_AIR_SOURCE = ['room-ach', 'room-fan', 'room-window'];
const BY_ROAD = ['travel-vehicle', 'travel-case', 'travel-habits'];
const EITHER_WAY = ['travel-full', 'travel-damaged'];
const hidden = (answers: Answers): readonly string[] => {
  const path = new Set(resolve(edition1, answers).path.map(({ id }) => id));
  return edition1.questions.map(({ id }) => id).filter((id) => !path.has(id));
};

/** What is answered, and which of the 74 questions are then not asked. */
const PATHS: [string, Answers, readonly string[]][] = [
  ['nothing yet: the defaults are a room, shut, and road trips', {}, [...BY_AIR_SOURCE, 'travel-air']],
  ['outdoors', { 'room-where': 'outdoor' }, [...INDOOR, ...BY_AIR_SOURCE, 'travel-air']],
  ['a measured room', { 'room-where': 'indoor', 'room-air': 'measured' }, ['room-fan', 'room-window', 'travel-air']],
  ['a fan', { 'room-air': 'fan' }, ['room-ach', 'room-window', 'travel-air']],
  ['a window', { 'room-air': 'openings' }, ['room-ach', 'room-fan', 'travel-air']],
  ['a fan, then outdoors after all', { 'room-air': 'fan', 'room-where': 'outdoor' }, [...INDOOR, ...BY_AIR_SOURCE, 'travel-air']],
  ['no trips', { 'travel-trips': { roadTrips: 0, airTrips: 0 } }, [...BY_AIR_SOURCE, ...BY_ROAD, ...EITHER_WAY, 'travel-air']],
  ['only by air', { 'travel-trips': { roadTrips: 0, airTrips: 1 } }, [...BY_AIR_SOURCE, ...BY_ROAD]],
  ['by road and by air', { 'travel-trips': { roadTrips: 1, airTrips: 1 } }, BY_AIR_SOURCE],
  ['trips not known', { 'travel-trips': 'not sure' }, [...BY_AIR_SOURCE, 'travel-air']],
];

describe('the path', () => {
  it.each(PATHS)('with %s', (_, answers, expected) => {
    expect([...hidden(answers)].sort()).toEqual([...expected].sort());
  });

  it('follows an input that the document writes over', () => {
    const { path } = resolve(edition1, { 'room-where': 'indoor' }, { chargingOutdoor: 1 });
    expect(path.map(({ id }) => id)).not.toContain('room-size');
  });

  it.each(['good-hall', 'ordinary-classroom', 'bad-store', 'everything'])('of %s is complete', (venue) => {
    const resolution = resolve(edition1, answersOf(venue));
    expect(resolution).toMatchObject({ current: null, missing: [], orphaned: [], unfit: [], relevant: answersOf(venue) });
  });
});

describe('the next question', () => {
  it('is the first that has no answer', () => {
    expect(resolve(edition1, {}).current?.id).toBe('team-packs');
    expect(resolve(edition1, { 'team-packs': 'not sure', 'team-use': 'not sure' }).current?.id).toBe('team-people');
  });

  it('is one again whose answer it cannot take', () => {
    const resolution = resolve(edition1, { ...answersOf('good-hall'), 'table-surface': 'marble', 'attic-door': 'yes' });
    expect(resolution.current?.id).toBe('table-surface');
    expect([...resolution.unfit].sort()).toEqual(['attic-door', 'table-surface']);
    expect(resolution.relevant).not.toHaveProperty('table-surface');
  });
});

describe('an edited early answer', () => {
  const before = { ...answersOf('ordinary-classroom') };
  const after = { ...before, 'room-where': 'outdoor' };

  it('drops the later answers that hung on it', () => {
    const { orphaned, relevant } = resolve(edition1, after);
    expect(orphaned).toEqual(['room-size', 'room-air', 'room-window']);
    for (const id of orphaned) expect(relevant).not.toHaveProperty(id);
  });

  it('gives them back when it is edited back', () => {
    expect(resolve(edition1, { ...after, 'room-where': 'indoor' }).relevant).toEqual(before);
  });
});

describe('progress', () => {
  it('counts what is asked, answered and not sure in each section', () => {
    const { progress } = resolve(edition1, { 'team-packs': 'not sure', 'team-officer': 'yes', 'room-where': 'outdoor', 'room-size': 'not sure' });
    expect(progress[0]).toEqual({ section: 'team', title: 'Team and packs', asked: 5, answered: 2, notSure: 1 });
    expect(progress[1]).toMatchObject({ section: 'room', asked: 7, answered: 1, notSure: 0 });
  });

  it('adds up to the path', () => {
    const { progress, path, missing } = resolve(edition1, answersOf('bad-store'));
    expect(progress.reduce((sum, { asked }) => sum + asked, 0)).toBe(path.length);
    expect(progress.reduce((sum, { answered }) => sum + answered, 0)).toBe(path.length - missing.length);
  });
});

describe('the order of answers', () => {
  it('changes nothing', () => {
    const entries = Object.entries(answersOf('everything'));
    const inOrder = resolve(edition1, Object.fromEntries(entries));
    fc.assert(fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
      expect(resolve(edition1, Object.fromEntries(shuffled))).toEqual(inOrder);
    }), { numRuns: 25 });
  });

  it('changes nothing when some are missing either', () => {
    const entries = Object.entries(answersOf('everything'));
    fc.assert(fc.property(fc.shuffledSubarray(entries), (some) => {
      const sorted = [...some].sort(([a], [b]) => (a < b ? -1 : 1));
      expect(resolve(edition1, Object.fromEntries(some))).toEqual(resolve(edition1, Object.fromEntries(sorted)));
    }), { numRuns: 50 });
  });
});

describe('a page of ticks', () => {
  const question = 'response-ready';
  const lines = { drill: 'yes', card: 'no', aid: 'partly', told: 'not sure', after: 'yes' } as const;
  const isMissing = (answer: Answer, notSureTicks: readonly string[] = []): boolean => resolve(edition2, { [question]: answer }, {}, { [question]: notSureTicks }).missing.includes(question);

  it('is answered when every line is, and counts meanwhile', () => {
    const some = { drill: lines.drill, card: lines.card, aid: lines.aid, told: lines.told };
    expect([isMissing(some), isMissing(lines), isMissing('not sure'), isMissing({})]).toEqual([true, false, false, true]);
    expect(resolve(edition2, { [question]: some }).relevant).toEqual({ [question]: some });
  });

  it('of an earlier edition is open for the lines that came later, until somebody says that they are not sure of them', () => {
    expect([isMissing(['drill']), isMissing(['drill'], ['told']), isMissing(['drill'], ['told', 'after'])]).toEqual([true, true, false]);
  });
});

describe('the second edition', () => {
  it('begins with whether one may charge at all', () => {
    expect(resolve(edition2, {}).current?.id).toBe('room-where');
    expect(resolve(edition2, {}).progress[0]?.title).toBe('First: may you charge at all?');
  });

  it('asks for what hangs on an answer of the same page only when it is given', () => {
    const asked = (answers: Answers): boolean => resolve(edition2, answers).path.some(({ id }) => id === 'routine-overnight');
    expect([asked({}), asked({ 'routine-attended': 'always' }), asked({ 'routine-attended': 'overnight' })]).toEqual([true, false, true]);
  });

  it.each(['good-hall', 'ordinary-classroom', 'bad-store'])('has every answer of the example %s', (venue) => {
    const { answers } = JSON.parse(readFileSync(`public/examples/${venue}.json`, 'utf8')) as { answers: Answers };
    expect(resolve(edition2, answers)).toMatchObject({ current: null, missing: [], orphaned: [], unfit: [] });
  });
});

it('an empty document is tied to its edition and answers nothing', () => {
  const document = emptyDocument(edition1, { id: 'a1', title: 'Room 14' });
  expect(document).toEqual({ id: 'a1', title: 'Room 14', contentVersion: '0.1.0', answers: {} });
  expect(resolve(edition1, document.answers).relevant).toEqual({});
});
