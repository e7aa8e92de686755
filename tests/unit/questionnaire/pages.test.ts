import { describe, expect, it } from 'vitest';
import { answerGroups, keeperQuestions } from '@/lib/questionnaire/pages';
import { aboutTime } from '@/app/_components/questions/about-time';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { resolve } from '@/lib/questionnaire/resolve';

const groupsOf = (content: typeof edition2, answers = {}) => answerGroups(content, resolve(content, answers));
const questionsIn = (groups: ReturnType<typeof groupsOf>) => groups.flatMap((group) => group.pages.flatMap((page) => page.questions.map((question) => question.id)));

describe('the pages of the answers', () => {
  it('hold every question that applies once, in both editions', () => {
    for (const content of [edition1, edition2]) {
      const asked = resolve(content, {}).path.map((question) => question.id);
      expect([...questionsIn(groupsOf(content))].sort()).toEqual([...asked].sort());
    }
  });

  it('begin with whether one may charge at all', () => {
    const [first] = groupsOf(edition2);
    expect(first?.title).toBe('First: may you charge at all?');
    expect(first?.pages.map((page) => page.id)).toContain('first-call');
  });

  it('say what it takes where the edition says it', () => {
    expect(groupsOf(edition2).every((group) => (group.seconds ?? 0) > 0)).toBe(true);
    expect(groupsOf(edition1).every((group) => group.seconds === null)).toBe(true);
    expect([aboutTime(3), aboutTime(44), aboutTime(51), aboutTime(119)]).toEqual(['about 10 s', 'about 50 s', 'about 1 min', 'about 2 min']);
  });

  it('leave out a page on which nothing applies', () => {
    const ids = groupsOf(edition2, { 'team-flies': 'no' }).flatMap((group) => group.pages.map((page) => page.id));
    expect(ids).toContain('table');
    expect(ids).not.toContain('arena-ways');
  });

  it('know what is for the caretaker, also single lines', () => {
    const ids = keeperQuestions(edition2.questions).map((question) => question.id);
    expect(ids).toEqual(expect.arrayContaining(['electric-circuit', 'electric-kit']));
    expect(ids).not.toContain('routine-check');
  });
});
