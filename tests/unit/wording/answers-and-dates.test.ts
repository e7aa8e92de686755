import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import type { Question } from '@/lib/content/model';
import { answerWords } from '@/lib/wording/answers';
import { calendarDay, calendarDayWords, dayWords, momentWords } from '@/lib/wording/dates';

const question = (id: string): Question => {
  const found = edition2.questions.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
};

describe('an answer on paper', () => {
  it('is the label of its option, or that nobody is sure', () => {
    const choice = edition2.questions.find((one) => one.kind === 'choice');
    if (choice?.kind !== 'choice') throw new Error('no choice');
    expect(answerWords(choice, choice.options[0]?.id)).toBe(choice.options[0]?.label);
    expect(answerWords(choice, 'not sure')).toBe('not sure');
    expect(answerWords(choice, undefined)).toBe('');
  });
  it('names each line with what was said, a list of the first edition too, and leaves blank lines out', () => {
    const ticks = edition2.questions.find((one) => one.kind === 'ticks');
    if (ticks?.kind !== 'ticks') throw new Error('no ticks');
    const [one, two] = ticks.options;
    expect(answerWords(ticks, { [one?.id ?? '']: 'partly' })).toBe(`${one?.label}: partly`);
    expect(answerWords(ticks, [one?.id ?? ''], [two?.id ?? ''])).toContain(`${one?.label}: yes; ${two?.label}: not sure`);
  });
  it('says a time in minutes and seconds and a share as of ten', () => {
    const timed = edition2.questions.find((one) => one.kind === 'number' && one.fields.some((field) => field.entry === 'minutes and seconds'));
    if (timed?.kind !== 'number') throw new Error('no time');
    const field = timed.fields.find((one) => one.entry === 'minutes and seconds');
    expect(answerWords(timed, { [field?.input ?? '']: 125 })).toBe(`${field?.label}: 2 min 5 s`);
    expect(answerWords(question('team-use'), { crashShare: 0.3 })).toContain('3 of ten');
  });
});

describe('days', () => {
  const at = new Date('2026-11-24T23:30:00Z');
  it('are those of the school, not of the server', () => {
    expect(calendarDay(at, 'UTC')).toBe('2026-11-24');
    expect(calendarDay(at, 'Asia/Tokyo')).toBe('2026-11-25');
    expect(dayWords(at, { locale: 'en-GB', timeZone: 'Asia/Tokyo' })).toBe('25 November 2026');
  });
  it('that are only a date move nowhere', () => expect(calendarDayWords('2026-11-25', { locale: 'en-GB' })).toBe('25 November 2026'));
  it('with a time say whose time it is', () => expect(momentWords(at, { locale: 'en-GB', timeZone: 'UTC' })).toMatch(/24 November 2026.*23:30.*UTC/));
});
