import { describe, expect, it } from 'vitest';
import { NOTHING_OPEN, pageReducer, type PageState, UNDO_DEPTH, undoable } from '@/app/try/_state/page-state';

const opened = (title: string, state: PageState = NOTHING_OPEN): PageState =>
  pageReducer(state, { type: 'opened', whole: { title }, source: { kind: 'example', example: title } });
const renamed = (state: PageState, title: string): PageState =>
  pageReducer(state, { type: 'changed', change: (whole) => ({ ...whole, title }), what: `call it ${title}` });

describe('the page of one room', () => {
  it('has nothing to take back when the first document is opened', () => {
    expect(undoable(opened('hall'))).toBeNull();
  });

  it('takes back the last change and only that', () => {
    const state = renamed(renamed(opened('hall'), 'gym'), 'annex');
    expect(undoable(state)).toBe('call it annex');
    expect(pageReducer(state, { type: 'undone' }).open?.whole).toEqual({ title: 'gym' });
  });

  it('takes back opening another room, with the edits of the one before', () => {
    const state = opened('store', renamed(opened('hall'), 'gym'));
    expect(pageReducer(state, { type: 'undone' }).open).toEqual({ whole: { title: 'gym' }, source: { kind: 'example', example: 'hall' }, edited: true });
  });

  it('takes back starting again', () => {
    const state = pageReducer(renamed(opened('hall'), 'gym'), { type: 'started again' });
    expect(state.open).toBeNull();
    expect(pageReducer(state, { type: 'undone' }).open?.whole).toEqual({ title: 'gym' });
  });

  it('does not count a change that changes nothing', () => {
    const state = opened('hall');
    expect(renamed(state, 'hall')).toBe(state);
  });

  it('ignores a change when no document is open, and an undo when there is nothing to take back', () => {
    expect(renamed(NOTHING_OPEN, 'gym')).toBe(NOTHING_OPEN);
    expect(pageReducer(NOTHING_OPEN, { type: 'undone' })).toBe(NOTHING_OPEN);
  });

  it('keeps saying what cannot be kept, whatever is changed', () => {
    const state = pageReducer(opened('hall'), { type: 'troubled', words: 'full' });
    expect(pageReducer(renamed(state, 'gym'), { type: 'undone' }).trouble).toBe('full');
  });

  it('forgets the oldest steps first', () => {
    const state = Array.from({ length: UNDO_DEPTH + 5 }, (_, index) => `name ${index}`).reduce(renamed, opened('hall'));
    expect(state.past).toHaveLength(UNDO_DEPTH);
    expect(state.past[0]?.before?.whole).toEqual({ title: 'name 4' });
  });
});
