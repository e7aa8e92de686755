import type { Content, Question } from '@/lib/content/model';
import { NOT_SURE } from './answer-fault';
import type { Resolution } from './resolve';

/** Questions that stand together, as far as they apply. */
export interface AnswerPage {
  readonly id: string;
  readonly title: string;
  readonly questions: readonly Question[];
  /** ids of all its questions, also of those that do not apply now */
  readonly all: readonly string[];
  readonly answered: number;
  /** of these, answered with "not sure" */
  readonly notSure: number;
  /** what it takes to read and answer them all, null where the edition does not say */
  readonly seconds: number | null;
}

export interface AnswerGroup { readonly id: string; readonly title: string; readonly pages: readonly AnswerPage[]; readonly seconds: number | null }

/**
 * The questions that apply, page by page under their sections. An edition without pages has one page a
 * section. A page on which nothing applies is left out.
 */
export function answerGroups(content: Content, resolution: Resolution): readonly AnswerGroup[] {
  return content.sections.flatMap(({ id, title }) => {
    const asked = resolution.path.filter((question) => question.section === id);
    const pages = pagesOf(content, id, title).map((page) => pageOf(page, asked, resolution)).filter((page) => page.questions.length > 0);
    return pages.length === 0 ? [] : [{ id, title, pages, seconds: secondsOf(pages.flatMap((page) => page.questions)) }];
  });
}

interface PageTitle { readonly id: string; readonly title: string; readonly questions: readonly string[] }

function pagesOf({ pages, questions }: Content, section: string, title: string): readonly PageTitle[] {
  const own = questions.filter((question) => question.section === section).map((question) => question.id);
  if (pages === undefined) return [{ id: section, title, questions: own }];
  return pages.filter((page) => page.questions.some((id) => own.includes(id)));
}

function pageOf({ id, title, questions }: PageTitle, asked: readonly Question[], { missing, relevant }: Resolution): AnswerPage {
  const here = questions.flatMap((question) => asked.filter((one) => one.id === question));
  return {
    id, title, questions: here, all: questions,
    answered: here.filter((question) => !missing.includes(question.id)).length,
    notSure: here.filter((question) => relevant[question.id] === NOT_SURE).length,
    seconds: secondsOf(here),
  };
}

/** What it takes to read and answer these questions, seconds; null when one of them does not say. */
export function secondsOf(questions: readonly Question[]): number | null {
  const all = questions.flatMap(({ seconds }) => (seconds === undefined ? [] : [seconds]));
  return all.length < questions.length ? null : all.reduce((sum, seconds) => sum + seconds, 0);
}

/** Questions for the building's caretaker, or with a line for them. */
export function keeperQuestions(questions: readonly Question[]): readonly Question[] {
  return questions.filter((question) => question.keeper === true || (question.kind === 'ticks' && question.options.some((line) => line.keeper === true)));
}
