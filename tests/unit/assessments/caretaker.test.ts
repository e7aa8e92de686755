import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { askedOfCaretaker, caretakerLinkEnd, judgeCaretakerLink, SendQuestionsSchema, withCaretakerLines } from '@/lib/assessments/caretaker';

const now = new Date('2026-11-25T10:00:00Z');
const link = { expiresAt: new Date('2026-11-26T10:00:00Z'), revokedAt: null, state: 'draft' };
const kit = edition2.questions.find(({ id }) => id === 'electric-kit')!;
const keeperLines = kit.kind === 'ticks' ? kit.options.filter(({ keeper }) => keeper === true).map(({ id }) => id) : [];
const otherLine = kit.kind === 'ticks' ? kit.options.find(({ keeper }) => keeper !== true)!.id : '';

describe('a caretaker’s link', () => {
  it('works until it ends, is taken back, or the answers have gone to the officer', () => {
    expect(judgeCaretakerLink(link, now).ok).toBe(true);
    expect(judgeCaretakerLink(null, now)).toMatchObject({ ok: false, reason: expect.stringContaining('not one of ours') as string });
    expect(judgeCaretakerLink({ ...link, revokedAt: now }, now)).toMatchObject({ ok: false, reason: expect.stringContaining('taken back') as string });
    expect(judgeCaretakerLink({ ...link, expiresAt: now }, now)).toMatchObject({ ok: false, reason: expect.stringContaining('ended') as string });
    for (const state of ['with-officer', 'signed', 'superseded', 'withdrawn']) expect(judgeCaretakerLink({ ...link, state }, now).ok).toBe(false);
    expect(caretakerLinkEnd(now, 3).toISOString()).toBe('2026-11-28T10:00:00.000Z');
  });
  it('is made for somebody, for some days, with at least one question', () => {
    const input = { versionId: 'v', forWhom: 'Mr Hale', days: '14', questions: 'room-building' };
    expect(SendQuestionsSchema.parse(input)).toEqual({ versionId: 'v', forWhom: 'Mr Hale', days: 14, questions: ['room-building'] });
    for (const wrong of [{ forWhom: ' ' }, { days: '365' }, { questions: [] }]) expect(SendQuestionsSchema.safeParse({ ...input, ...wrong }).success).toBe(false);
  });
});

describe('a question of which only some lines are for the caretaker', () => {
  it('shows those lines alone', () => {
    expect(keeperLines.length).toBeGreaterThan(0);
    const asked = askedOfCaretaker(kit);
    expect(asked.kind === 'ticks' && asked.options.map(({ id }) => id)).toEqual(keeperLines);
    const whole = edition2.questions.find(({ id }) => id === 'room-building')!;
    expect(askedOfCaretaker(whole)).toBe(whole);
  });
  it('keeps the other lines as they were', () => {
    const [first = ''] = keeperLines;
    expect(withCaretakerLines(kit, { [otherLine]: 'yes', [first]: 'no' }, [], { [first]: 'yes' })).toEqual({ [otherLine]: 'yes', [first]: 'yes' });
    expect(withCaretakerLines(kit, undefined, [], null)).toBeNull();
    expect(withCaretakerLines(kit, 'not sure', [], { [first]: 'yes' })).toMatchObject({ [otherLine]: 'not sure', [first]: 'yes' });
  });
});
