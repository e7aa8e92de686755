import { describe, expect, it } from 'vitest';
import { withLine } from '@/app/try/_state/edit-ticks';
import { answerOf, notSureTicksOf, type WholeDocument } from '@/app/try/_state/whole-document';
import { edition2 } from '@/lib/content/edition-2';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { stateOf } from '@/lib/core/answers/venue';
import type { AssessmentDocument } from '@/lib/core/document';
import { blankLines as blank, saidOfLine as saidOf, type TickQuestion } from '@/lib/questionnaire/ticks';
import type { TickLine } from '@/lib/content/model';

const ticks = (id: string): TickQuestion => {
  const found = edition2.questions.find((question) => question.id === id);
  if (found?.kind !== 'ticks') throw new Error(`${id} is no page of ticks`);
  return found;
};
const response = ticks('response-ready');
const room = (answers: unknown, notSureTicks?: unknown): WholeDocument => ({ id: 'r', title: 'Room', answers, ...(notSureTicks === undefined ? {} : { notSureTicks }) });
const saidOfLine = (whole: WholeDocument, question: TickQuestion, line: TickLine) => saidOf(answerOf(whole, question.id), notSureTicksOf(whole, question.id), line);
const blankLines = (whole: WholeDocument, question: TickQuestion) => blank(question, answerOf(whole, question.id), notSureTicksOf(whole, question.id));
const said = (whole: WholeDocument, question = response) => Object.fromEntries(question.options.map((line) => [line.id, saidOfLine(whole, question, line)]));

describe('the lines of a page of ticks', () => {
  it('are blank until somebody answers them, each by itself', () => {
    expect(blankLines(room({}), response)).toHaveLength(response.options.length);
    const one = withLine(room({}), response, 'drill', 'partly');
    expect(one['answers']).toEqual({ 'response-ready': { drill: 'partly' } });
    expect(blankLines(one, response).map(({ id }) => id)).toEqual(['card', 'aid', 'told', 'after']);
  });

  it('read a list of an earlier edition: nothing of what came later, and not enough where more is asked for', () => {
    expect(said(room({ 'response-ready': ['drill'] }))).toEqual({ drill: 'yes', card: 'no', aid: 'no', told: undefined, after: undefined });
    expect(said(room({ 'damaged-keep': ['sand'] }), ticks('damaged-keep'))).toEqual({ sand: 'not sure', mark: 'no' });
  });

  it('keep what a list said when one line is changed, with what was left open', () => {
    const list = room({ 'response-ready': ['drill'] }, { 'response-ready': ['card'] });
    expect(withLine(list, response, 'told', 'no')).toEqual(room({ 'response-ready': { drill: 'yes', card: 'not sure', aid: 'no', told: 'no' } }));
  });

  it('are all not sure when the whole question is', () => {
    expect(withLine(room({ 'response-ready': 'not sure' }), response, 'drill', 'yes')['answers']).toEqual({
      'response-ready': { drill: 'yes', card: 'not sure', aid: 'not sure', told: 'not sure', after: 'not sure' },
    });
  });

  it('mean to the calculation what they say on the page', () => {
    for (const answer of [undefined, 'not sure', ['drill', 'aid'], { drill: 'yes', card: 'partly', aid: 'no' }]) {
      const whole = room(answer === undefined ? {} : { 'response-ready': answer });
      const venue = resolveVenue(edition2, whole as unknown as AssessmentDocument);
      for (const line of response.options) {
        const state = { yes: 'in place', partly: line.partly.state, no: 'absent', 'not sure': 'not sure' }[saidOfLine(whole, response, line) ?? 'not sure'];
        expect(Object.keys(line.sets.controls).map((control) => stateOf(venue, control))).toEqual([state]);
      }
    }
  });
});
