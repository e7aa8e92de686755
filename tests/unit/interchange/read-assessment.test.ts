import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { currentContent } from '@/lib/content/editions';
import { quickScore } from '@/lib/core/quick-score';
import { type AssessmentRead, readAssessment } from '@/lib/interchange/read-assessment';
import { resolve } from '@/lib/questionnaire/resolve';
import { writeAssessment } from '@/lib/interchange/write-assessment';
import { smallDocument, venueDocument } from '@/tests/support/assessment-text';

const VENUES = ['good-hall', 'ordinary-classroom', 'bad-store', 'everything'];
const read = (document: unknown): AssessmentRead => readAssessment(JSON.stringify(document));
const faultsOf = (document: unknown): readonly string[] => {
  const result = read(document);
  return result.ok ? [] : result.faults.map(({ path, problem, expected }) => `${path} ${problem}; ${expected}`);
};
const readOrFail = (document: unknown) => {
  const result = read(document);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result;
};

describe('a sound document', () => {
  it.each(VENUES)('%s is read as it was written', (venue) => {
    const { format, ...rest } = venueDocument(venue);
    const { document, assessment, content } = readOrFail({ format, ...rest });
    expect(JSON.parse(JSON.stringify(document))).toEqual(rest);
    expect(assessment.format).toBe(format);
    expect(content).toBe(currentContent);
  });

  it.each(['good-hall', 'ordinary-classroom', 'bad-store'])('public/examples/%s.json is written for the edition in force, and nothing in it is to be remarked', (venue) => {
    const { document, content, remarks } = readOrFail(JSON.parse(readFileSync(`public/examples/${venue}.json`, 'utf8')));
    expect([document.id, document.contentVersion]).toEqual([venue, content.version]);
    expect(remarks).toEqual([]);
  });

  it('may give a state with its reason, and the calculation gets the state', () => {
    const { document, assessment } = readOrFail(smallDocument({ states: { 'charge-box': { state: 'in place', reason: 'bought in May' }, sprinkler: 'absent' } }));
    expect(document.states).toEqual({ 'charge-box': 'in place', sprinkler: 'absent' });
    expect(assessment.states?.['charge-box']).toEqual({ state: 'in place', reason: 'bought in May' });
  });

  it('may say of each line of ticks what holds, and leave lines open', () => {
    const answers = { 'people-kit': { caps: 'yes', tidy: 'partly', guard: 'not sure' }, 'store-keep': {} };
    expect(readOrFail(smallDocument({ answers })).document.answers).toEqual(answers);
  });

  it('may measure what the options of a question only round', () => {
    const inputs = { arenaAch: 2.3, vehicleEvac: 52, exits: 3 };
    expect(readOrFail(smallDocument({ inputs })).document.inputs).toEqual(inputs);
  });

  it('may use every part that only describes it', () => {
    const about = {
      school: 'Tern Lane School', site: 'Main building', preparedBy: 'K. M.', preparedOn: '2024-02-29', notes: { 'room-size': 'measured\ntwice' },
      areas: [{ name: 'Room 14', use: 'charging', volumeM3: 180, note: 'by the yard' }], packs: [{ label: 'A1', count: 24, cells: 4, capacityMah: 850, energyWh: 12.6 }],
    };
    expect(readOrFail(smallDocument(about)).assessment).toMatchObject(about);
  });

  it('may carry a matrix of the school that is monotone', () => {
    const matrix = { title: 'Ours', from: [0, 0.1], words: ['seldom', 'often'], cells: [['low', 'low', 'moderate', 'high', 'high'], ['low', 'moderate', 'moderate', 'high', 'extreme']] };
    expect(readOrFail(smallDocument({ matrix })).document.matrix).toEqual(matrix);
  });

  it('comes back the same when it is written and read again', () => {
    for (const venue of VENUES) {
      const { assessment } = readOrFail(venueDocument(venue));
      const again = readAssessment(writeAssessment(assessment));
      expect(again.ok && again.assessment).toEqual(assessment);
    }
  });
});

describe('a remark', () => {
  const remarksOn = (document: unknown) => readOrFail(document).remarks.map(({ path, remark }) => `${path} ${remark}`);

  it.each<[string, Record<string, unknown>, string[]]>([
    ['on as many warm trips as trips: none', { answers: { 'travel-trips': { roadTrips: 3, warmTrips: 3 } } }, []],
    ['on an answer that no longer counts', { answers: { 'room-where': 'outdoor', 'room-size': { chargingVolume: 60 } } }, ['$.answers["room-size"] is not used: another answer takes this question away']],
    ['on an answer that an input takes away', { answers: { 'room-size': 'not sure' }, inputs: { chargingOutdoor: 1 } }, ['$.answers["room-size"] is not used: another answer takes this question away']],
    ['on a state without a reason', { states: { sprinkler: 'absent' } }, ['$.states.sprinkler is written over without a reason']],
    ['on a state with one: none', { states: { sprinkler: { state: 'absent', reason: 'turned off' } } }, []],
  ])('%s', (_, changes, expected) => {
    expect(remarksOn(smallDocument(changes))).toEqual(expected);
  });
});

describe('a document of the first edition', () => {
  const first = (changes: Record<string, unknown>) => smallDocument({ contentVersion: '0.1.0', ...changes });
  const remarkOn = (document: unknown): string | undefined => readOrFail(document).remarks.find(({ path }) => path === '$.contentVersion')?.remark;

  it('is read with the second, and says how much was not asked when it was written', () => {
    const { content, document } = readOrFail(first(venueDocument('ordinary-classroom')));
    expect(content).toBe(edition2);
    expect(document.contentVersion).toBe('0.1.0');
    const asked = resolve(edition2, document.answers);
    const before = new Set(edition1.questions.map(({ id }) => id));
    const questions = asked.path.filter(({ id }) => !before.has(id)).length;
    const lines = asked.path.flatMap((question) => (question.kind === 'ticks' ? question.options : [])).filter(({ newIn }) => newIn === 2).length;
    expect([questions, lines]).toEqual([23, 9]);
    expect(remarkOn(first(venueDocument('ordinary-classroom')))).toBe('is of edition 1; it is read with edition 2: 23 questions and 9 lines of its lists that apply here were not there when it was written and count as not answered');
  });

  it('does not count what has been answered since', () => {
    expect(remarkOn(first({ answers: {} }))).toMatch(/^is of edition 1; it is read with edition 2: \d+ questions that apply here/);
    const open = (answers: Record<string, unknown>): number => Number(/: (\d+) questions/.exec(remarkOn(first({ answers })) ?? '')?.[1]);
    expect(open({ 'alarm-building': 'yes' })).toBe(open({}) - 1);
    expect(remarkOn(first({ answers: { 'store-keep': ['cool'] } }))).toMatch(/ and 1 line of its lists that apply here/);
    expect(remarkOn(first({ answers: { 'store-keep': ['cool'] }, notSureTicks: { 'store-keep': ['together'] } }))).not.toMatch(/line of its lists/);
  });

  it('has no such remark when it is read with its own edition, or names none', () => {
    const own = readAssessment(JSON.stringify(first({})), edition1);
    expect(own.ok && own.remarks).toEqual([]);
    expect(remarkOn(smallDocument())).toBeUndefined();
  });

  it('with more warm trips than trips has a remark in its own edition, which cannot hold one to the other', () => {
    const own = readAssessment(JSON.stringify(first({ answers: { 'travel-trips': { roadTrips: 3, warmTrips: 4 } } })), edition1);
    expect(own.ok && own.remarks).toEqual([{ path: '$.answers["travel-trips"].warmTrips', remark: 'is 4, more than the 3 trips by road of which it is a part' }]);
  });

  it('scores under the second as the same answers in lines', () => {
    const list = readOrFail(first({ answers: { 'store-keep': ['cool'], 'damaged-keep': ['sand'] } })).document;
    const lines = readOrFail(smallDocument({ answers: { 'store-keep': { cool: 'yes', locked: 'no' }, 'damaged-keep': { sand: 'not sure', mark: 'no' } } })).document;
    expect(quickScore(edition2, list).totalHarm).toBe(quickScore(edition2, lines).totalHarm);
  });
});

describe('a fault', () => {
  it.each<[string, unknown, string[]]>([
    ['a list', [], ['$ is a list; an object { } with "format", "id", "title" and "answers"']],
    ['null', null, ['$ is null; an object { } with "format", "id", "title" and "answers"']],
    ['nothing in it', {}, ['$.format is missing; "sandbucket-assessment.v1"', '$.id is missing; one line of plain text of 1 to 100 characters', '$.title is missing; one line of plain text of 1 to 200 characters', '$.answers is missing; an object { } with an answer by question id']],
    ['answers in a list', smallDocument({ answers: ['yes'] }), ['$.answers is a list; an object { } with an answer by question id']],
    ['a version that is a number', smallDocument({ contentVersion: 1 }), ['$.contentVersion is 1; one line of plain text of 1 to 40 characters']],
    ['a long title, measured and not repeated', smallDocument({ title: 'x'.repeat(201) }), ['$.title has 201 characters; one line of plain text of 1 to 200 characters']],
    ['too many rows', smallDocument({ matrix: { title: 'x', from: [0, 1], words: ['a', 'b'], cells: [['low'], ['low', 'low', 'low', 'low', 'low']] } }), ['$.matrix.cells[0] has 1 entries; a list of exactly 5 grades']],
    ['a matrix nobody has', smallDocument({ matrix: 'four-by-four' }), ['$.matrix is the text "four-by-four"; one of "five-by-five", "mil-std-882e", "three-by-three", or an object with "title", "from", "words" and "cells"']],
    ['a matrix that begins late', smallDocument({ matrix: { title: 'x', from: [0.1, 1], words: ['a', 'b'], cells: [['low', 'low', 'low', 'low', 'low'], ['low', 'low', 'low', 'low', 'low']] } }), ['$.matrix.from[0] is 0.1; 0: the rarest level begins at never']],
    ['"not sure" for a number to call', smallDocument({ inputs: { localNumber: 'not sure' } }), ['$.inputs.localNumber is the text "not sure"; one line of text of at most 200 characters']],
    ['ticks that are no list', smallDocument({ notSureTicks: { 'people-kit': 'not sure' } }), ['$.notSureTicks["people-kit"] is the text "not sure"; a list of any of "caps", "case", "tidy", "guard", "warning", "solder"']],
    ['an escape sequence for the terminal', smallDocument({ planned: ['\u001b[2J\u202e'] }), ['$.planned[0] is the text "\\u001b[2J\\u202e"; the id of a control of the content; "npm run content" prints them all']],
  ])('in a document with %s', (_, document, expected) => {
    expect(faultsOf(document)).toEqual(expected);
  });

  it('is named for every place at once, across all parts', () => {
    const document = smallDocument({ id: 1, answers: { 'table-surface': 'x' }, seed: -1, planned: ['x'], record: { x: { events: 0, exposure: 1 } } });
    const read1 = read(document);
    expect(read1.ok ? [] : read1.faults.map(({ path }) => path).sort()).toEqual(['$.answers["table-surface"]', '$.id', '$.planned[0]', '$.record.x', '$.seed']);
  });

  it('is counted beyond five hundred', () => {
    const answers = Object.fromEntries(Array.from({ length: 620 }, (_, at) => [`nobody-asks-${at}`, 'yes']));
    const faults = faultsOf(smallDocument({ answers }));
    expect(faults).toHaveLength(501);
    expect(faults.at(-1)).toBe('$ has 120 more faults; these put right first');
  });

  it('in a crowd is still found quickly', () => {
    const answers = Object.fromEntries(Array.from({ length: 8_000 }, (_, at) => [`question-${at}`, 1]));
    const start = performance.now();
    expect(faultsOf(smallDocument({ answers }))).toHaveLength(501);
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});

describe('any document at all', () => {
  /** A value somewhere in a sound document is replaced, taken away, or has a stranger beside it. */
  const mutated = fc.tuple(fc.constantFrom(...VENUES), fc.array(fc.nat(), { maxLength: 4 }), fc.constantFrom('replace', 'remove', 'add'), fc.jsonValue(), fc.string())
    .map(([venue, way, how, value, name]) => {
      const document = venueDocument(venue);
      let place: Record<string, unknown> = document;
      let key = '';
      for (const turn of [...way, 0]) {
        const keys = Object.keys(place);
        key = keys[turn % Math.max(1, keys.length)] ?? '';
        const below = place[key];
        if (typeof below !== 'object' || below === null) break;
        if (turn !== 0) place = below as Record<string, unknown>;
      }
      if (how === 'remove') Reflect.deleteProperty(place, key);
      else Reflect.set(place, how === 'add' ? name : key, value);
      return JSON.stringify(document);
    });

  const holds = (result: AssessmentRead): void => {
    if (result.ok) expect(result.inputHash).toMatch(/^[0-9a-f]{64}$/);
    else expect(result.faults.every(({ path, problem, expected }) => path.startsWith('$') && problem !== '' && expected !== '')).toBe(true);
    if (!result.ok) expect(result.faults.length).toBeGreaterThan(0);
  };

  it('is read or has faults, when a sound one was changed anywhere', () => {
    fc.assert(fc.property(mutated, (text) => holds(readAssessment(text))), { numRuns: 300 });
  });

  it('is read or has faults, when a sound text was cut or overwritten anywhere', () => {
    const sound = JSON.stringify(venueDocument('everything'), null, 1);
    fc.assert(fc.property(fc.nat(sound.length), fc.nat(20), fc.string(), (at, gone, put) => {
      holds(readAssessment(sound.slice(0, at) + put + sound.slice(at + gone)));
    }), { numRuns: 300 });
  });

  it('is read or has faults, when it is no document of ours', () => {
    fc.assert(fc.property(fc.oneof(fc.json(), fc.string()), (text) => holds(readAssessment(text))), { numRuns: 300 });
  });
});
