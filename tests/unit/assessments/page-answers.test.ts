import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { Question } from '@/lib/content/model';
import { askedQuestion } from '@/lib/assessments/asked-question';
import { answersByQuestion, conflictsOf, isUntouched, readPageAnswers } from '@/lib/assessments/page-answers';
import { keepField, noteField, seenField } from '@/lib/assessments/page-fields';
import { answerRecord } from '@/tests/support/version-for-tests';

const question = (id: string): Question => edition2.questions.find((one) => one.id === id)!;
const form = (fields: Readonly<Record<string, string | readonly string[]>>) => ({ getAll: (name: string) => [fields[name] ?? []].flat() });
const kept = answersByQuestion([answerRecord('room-exits', 'yes', { revision: 3, note: 'seen in May' })]);
const exits = [question('room-exits')];

describe('a page that is sent', () => {
  it('is read with notes and the revision that was seen', () => {
    expect(readPageAnswers(exits, form({ 'room-exits': 'one', [seenField('room-exits')]: '3', [noteField('room-exits')]: ' by the window\r\nsince June\u202e ' }), kept)).toEqual({
      ok: true, sent: [{ questionId: 'room-exits', value: 'one', notSureTicks: [], note: 'by the window\nsince June', seen: 3 }],
    });
  });

  it('left empty clears an answer that was seen, and never stands for zero', () => {
    expect(readPageAnswers([question('room-size')], form({ 'room-size.chargingLength': '', [seenField('room-size')]: '0' }), kept)).toMatchObject({ ok: true, sent: [{ value: null, seen: 0 }] });
  });

  it('comes back with a fault at its field: of a number, of a note', () => {
    const read = readPageAnswers([question('room-size')], form({ 'room-size.chargingLength': 'wide', [noteField('room-size')]: 'x'.repeat(2001) }), kept);
    expect(read.ok ? [] : read.faults.map(({ field }) => field).sort()).toEqual([noteField('room-size'), 'room-size.chargingLength'].sort());
  });

  it('has seen nothing when the revision cannot be read, so that it writes over nothing', () => {
    for (const seen of ['', 'x', '-1', '3.5', '99999999999']) {
      const read = readPageAnswers(exits, form({ 'room-exits': 'one', [seenField('room-exits')]: seen }), kept);
      expect(read.ok && conflictsOf(exits, read.sent, kept)).toHaveLength(1);
    }
  });
});

describe('two people at one answer', () => {
  const sent = (fields: Readonly<Record<string, string>>) => {
    const read = readPageAnswers(exits, form({ 'room-exits': 'one', [seenField('room-exits')]: '2', ...fields }), kept);
    return read.ok ? read.sent : [];
  };
  it('is a conflict for the later one, with both answers', () => {
    expect(conflictsOf(exits, sent({}), kept)).toMatchObject([{ kept: { value: 'yes', byName: 'Kim Marsh' }, sent: { value: 'one', seen: 2 } }]);
  });
  it('is none when both say the same', () => {
    expect(conflictsOf(exits, sent({ 'room-exits': 'yes', [noteField('room-exits')]: 'seen in May' }), kept)).toEqual([]);
  });
  it('is none where the later one left it as empty as they found it, and is one where they emptied what they saw', () => {
    expect(isUntouched({ questionId: 'room-exits', value: null, notSureTicks: [], note: '', seen: 0 })).toBe(true);
    for (const more of [{ seen: 1 }, { note: 'by the window' }, { value: 'one' }]) expect(isUntouched({ questionId: 'room-exits', value: null, notSureTicks: [], note: '', seen: 0, ...more })).toBe(false);
  });
  it('is settled by keeping theirs, which sends nothing', () => {
    expect(sent({ [keepField('room-exits')]: 'theirs' })).toEqual([]);
  });
  it('is settled by mine only over the revision that was shown', () => {
    expect(conflictsOf(exits, sent({ [keepField('room-exits')]: 'mine-3' }), kept)).toEqual([]);
    expect(conflictsOf(exits, sent({ [keepField('room-exits')]: 'mine-2' }), kept)).toHaveLength(1);
  });
});

describe('a question on a page', () => {
  const style = { locale: 'en-GB', timeZone: 'Europe/London' };
  const fact = { question: 'room-size', answer: { chargingLength: 8, chargingWidth: 6 }, from: 'area' as const, where: 'Main building, Room 14', prefilled: true };
  it('is filled in from the register while nobody has answered, and says where it stands', () => {
    const asked = askedQuestion(question('room-size'), undefined, fact, style);
    expect(asked.values).toMatchObject({ 'room-size.chargingLength': '8', 'room-size.chargingWidth': '6', 'room-size.chargingHeight': '' });
    expect(asked).toMatchObject({ seen: 0, by: null, register: { standing: 'to confirm', where: 'Main building, Room 14' } });
  });
  it('keeps its answer when the register changed, and shows the difference', () => {
    const asked = askedQuestion(question('room-size'), answerRecord('room-size', { chargingLength: 7, chargingWidth: 6 }, { origin: 'from-site', revision: 2 }), fact, style);
    expect(asked.values).toMatchObject({ 'room-size.chargingLength': '7' });
    expect(asked).toMatchObject({ seen: 2, register: { standing: 'differs', words: 'length: 8 m; width: 6 m' } });
    expect(asked.by).toBe('Kim Marsh, 25 November 2026 at 08:00 GMT, from the register of places');
  });
});
