import { describe, expect, it } from 'vitest';
import { tickState, withAllPlanned, withAnswer, withNumbers, withPlanned, withTick } from '@/app/try/_state/edit-document';
import { textOf, wholeFrom, type WholeDocument } from '@/app/try/_state/whole-document';
import type { Question } from '@/lib/content/model';

const option = (id: string) => ({ id, label: id, sets: { controls: { [id]: 'in place' as const }, inputs: {} } });
const kit: Extract<Question, { kind: 'multi' }> = {
  id: 'kit', section: 'handling', kind: 'multi', text: 'Which?', why: 'Why.', good: 'All.', notSure: true, source: 'our judgement',
  unticked: 'absent', options: [option('caps'), option('tidy'), option('warning')],
};
const room: WholeDocument = { id: 'r', title: 'Room', answers: { surface: 'tiles', kit: ['caps'] }, school: { name: 'kept' } };

describe('changing answers in place', () => {
  it('sets and takes away one answer and touches nothing else', () => {
    expect(withAnswer(room, 'surface', 'stone')).toEqual({ ...room, answers: { surface: 'stone', kit: ['caps'] } });
    expect(withAnswer(room, 'surface', undefined)).toEqual({ ...room, answers: { kit: ['caps'] } });
  });

  it('drops open ticks when the whole question is answered anew', () => {
    const open: WholeDocument = { ...room, notSureTicks: { kit: ['tidy'], other: ['x'] } };
    expect(withAnswer(open, 'kit', 'not sure')).toEqual({ ...room, answers: { surface: 'tiles', kit: 'not sure' }, notSureTicks: { other: ['x'] } });
  });

  it('reads each line of a multi question', () => {
    const open: WholeDocument = { ...room, notSureTicks: { kit: ['tidy'] } };
    expect(kit.options.map(({ id }) => tickState(open, kit, id))).toEqual(['yes', 'not sure', 'no']);
    expect(tickState(withAnswer(room, 'kit', 'not sure'), kit, 'caps')).toBe('not sure');
    expect(tickState(withAnswer(room, 'kit', undefined), kit, 'caps')).toBe('not answered');
  });

  it('turns the lines nobody answered into "not sure", never into "no"', () => {
    const first = withTick(withAnswer(room, 'kit', undefined), kit, 'tidy', 'yes');
    expect(kit.options.map(({ id }) => tickState(first, kit, id))).toEqual(['not sure', 'yes', 'not sure']);
  });

  it('never lists one line both as ticked and as not sure', () => {
    const unsure = withTick(room, kit, 'caps', 'not sure');
    expect(unsure).toMatchObject({ answers: { kit: [] }, notSureTicks: { kit: ['caps'] } });
    const sure = withTick(unsure, kit, 'caps', 'no');
    expect(sure).toEqual({ ...room, answers: { surface: 'tiles', kit: [] } });
  });

  it('leaves an empty number out instead of writing zero, and a question with none unanswered', () => {
    expect(withNumbers(room, 'size', { volume: 180, height: undefined })['answers']).toMatchObject({ size: { volume: 180 } });
    expect(withNumbers(room, 'size', { volume: undefined })).toEqual(room);
    expect(withNumbers(room, 'size', { volume: 0 })['answers']).toMatchObject({ size: { volume: 0 } });
  });

  it('changes nothing when the same numbers are given in another order, or "not sure" is left alone', () => {
    const sized = withNumbers(room, 'size', { length: 4, width: 3 });
    expect(withNumbers(sized, 'size', { width: 3, length: 4 })).toBe(sized);
    expect(withNumbers(sized, 'size', { width: 3, length: 5 })).not.toBe(sized);
    const unsure = withAnswer(room, 'size', 'not sure');
    expect(withNumbers(unsure, 'size', { length: undefined, width: undefined })).toBe(unsure);
    expect(Object.keys(withAnswer(sized, 'surface', 'stone')['answers'] as object)).toEqual(['surface', 'kit', 'size']);
  });

  it('plans an action once, in the order in which they were planned', () => {
    const planned = withAllPlanned(room, ['box', 'drill', 'box']);
    expect(planned['planned']).toEqual(['drill', 'box']);
    expect(withPlanned(planned, 'drill', false)['planned']).toEqual(['box']);
  });

  it('keeps every part of what was pasted', () => {
    const text = '{"format":"sandbucket-assessment.v1","extra":{"deep":[1,2,{"three":null}]},"answers":{}}';
    expect(JSON.parse(textOf(withAnswer(wholeFrom(text), 'surface', 'stone')))).toEqual({ ...JSON.parse(text), answers: { surface: 'stone' } });
  });
});
