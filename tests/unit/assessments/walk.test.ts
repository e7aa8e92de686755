import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { firstOpenPage, isOpenPage, pageAfter, pageBefore, walkOf, whereNext } from '@/lib/assessments/walk';
import type { AssessmentDocument } from '@/lib/core/document';
import { answerRecord, exampleDocument, versionRecord } from '@/tests/support/version-for-tests';

const walk = (answers: AssessmentDocument['answers']) => walkOf(edition2, versionRecord({ answers: Object.entries(answers).map(([id, value]) => answerRecord(id, value)) }));
const whole = exampleDocument('ordinary-classroom').answers;

describe('the walk', () => {
  it('begins with the knock-out questions and gives every question that applies one page', () => {
    const { pages, resolution } = walk({});
    expect(pages[0]).toMatchObject({ id: 'first-place', section: 'first' });
    const onPages = pages.flatMap((page) => page.questions.map(({ id }) => id));
    expect([...onPages].sort()).toEqual(resolution.path.map(({ id }) => id).sort());
  });

  it('goes on at the first page with an open question, and counts the time of what is open alone', () => {
    const begun = walk({ 'room-where': 'indoor', 'room-exits': 'yes', 'room-off-exit': 'yes' });
    expect(firstOpenPage(begun)?.id).toBe('first-charging');
    expect(begun.secondsLeft).toBeLessThan(walk({}).secondsLeft ?? 0);
    expect(walk(whole).secondsLeft).toBe(0);
    expect(firstOpenPage(walk(whole))).toBeNull();
  });

  it('skips pages that are answered already, and comes back to what was left open', () => {
    const last = { ...whole };
    delete (last as Record<string, unknown>)['room-exits'];
    const one = walk(last);
    expect(pageAfter(one, 'table')?.id).toBe('first-place');
    expect(pageAfter(one, 'first-place')).toBeNull();
  });

  it('reads through page by page where nothing is open, and ends after the last', () => {
    const done = walk(whole);
    expect(done.pages.every((page) => !isOpenPage(page))).toBe(true);
    expect(pageAfter(done, 'first-place')?.id).toBe('first-charging');
    expect(pageAfter(done, done.pages.at(-1)?.id ?? '')).toBeNull();
    expect(pageBefore(done, 'first-charging')?.id).toBe('first-place');
    expect(pageBefore(done, 'first-place')).toBeNull();
  });

  it('stays on a page when an answer brought up a question that was not on it', () => {
    const before = walk({ ...whole, 'people-needs': 'nobody' });
    const shown = before.pages.find(({ id }) => id === 'first-people')?.questions.map(({ id }) => id) ?? [];
    const others = Object.fromEntries(Object.entries(whole).filter(([id]) => !['people-help', 'people-breathing'].includes(id)));
    const after = walk({ ...others, 'people-needs': 'help' });
    expect(shown).not.toContain('people-help');
    expect(whereNext(after, 'first-people', shown)?.id).toBe('first-people');
    expect(whereNext(before, 'first-people', shown)?.id).toBe('first-table');
  });
});
