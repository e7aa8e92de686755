import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { factsToConfirm, originOf, type RegisterFact, standingOfFact, withFact } from '@/lib/assessments/register-facts';
import { answerRecord } from '@/tests/support/version-for-tests';

const size: RegisterFact = { question: 'room-size', answer: { chargingLength: 8, chargingWidth: 6 }, from: 'area', where: 'Room 14', prefilled: true };
const packs: RegisterFact = { question: 'team-packs', answer: { packs: 24 }, from: 'packs', where: 'Pack register', prefilled: true };
const air: RegisterFact = { question: 'room-air', answer: 'closed', from: 'area', where: 'Room 14', prefilled: false };

describe('what the register says', () => {
  it('is to be confirmed, or told where the content asks all the same', () => {
    expect([standingOfFact(size, undefined), standingOfFact(air, undefined)]).toEqual(['to confirm', 'told']);
  });
  it('is as answered when every figure it knows is, whatever it does not know', () => {
    expect(standingOfFact(size, { chargingLength: 8, chargingWidth: 6, chargingHeight: 3 })).toBe('as answered');
    expect(standingOfFact(size, { chargingLength: 8 })).toBe('differs');
    expect(standingOfFact(size, 'not sure')).toBe('differs');
  });
  it('put into an answer leaves the figures that it does not know', () => {
    expect(withFact({ chargingLength: 7, chargingHeight: 3 }, size)).toEqual({ chargingLength: 8, chargingWidth: 6, chargingHeight: 3 });
    expect(withFact('not sure', size)).toEqual(size.answer);
    expect(withFact('wide-open', air)).toBe('closed');
  });
  it('is the origin of an answer only when the answer says it', () => {
    expect(originOf({ packs: 24, cells: 4 }, undefined, packs)).toBe('from-packs');
    expect(originOf({ packs: 25 }, undefined, packs)).toBe('typed');
    expect(originOf({ chargingLength: 8, chargingWidth: 6 }, undefined, size)).toBe('from-site');
    expect(originOf('yes', undefined, undefined)).toBe('typed');
    expect(originOf(null, answerRecord('room-exits', 'yes', { origin: 'caretaker' }), undefined)).toBe('typed');
  });
  it('does not change where an answer came from that only got a note', () => {
    expect(originOf('yes', answerRecord('room-exits', 'yes', { origin: 'caretaker' }), undefined)).toBe('caretaker');
    expect(originOf('one', answerRecord('room-exits', 'yes', { origin: 'caretaker' }), undefined)).toBe('typed');
  });
  it('is confirmed only for questions that apply and that nobody has answered', () => {
    const indoors = answerRecord('room-where', 'indoor');
    expect(factsToConfirm(edition2, [packs, size, air], [indoors]).map(({ question }) => question.id)).toEqual(['team-packs', 'room-size']);
    expect(factsToConfirm(edition2, [packs, size], [answerRecord('room-where', 'outdoor'), answerRecord('team-packs', { packs: 3 })]).map(({ question }) => question.id)).not.toContain('team-packs');
  });
});
