import type { Content } from '@/lib/content/model';
import { type AnswerPage, answerGroups, secondsOf } from '@/lib/questionnaire/pages';
import { type Resolution, resolve } from '@/lib/questionnaire/resolve';
import { documentOf, type VersionRecord } from './version';

/** A page of the walk, with the section it stands in. */
export interface WalkPage extends AnswerPage { readonly section: string; readonly sectionTitle: string }

/** Where somebody is on the way through the questions, worked out anew from the answers every time. */
export interface Walk {
  readonly content: Content;
  readonly resolution: Resolution;
  /** pages on which something applies, knock-out questions first */
  readonly pages: readonly WalkPage[];
  /** what it takes to answer what is open, seconds; null where the edition does not say */
  readonly secondsLeft: number | null;
}

/** The walk through the questions of an edition, given the answers of a version. */
export function walkOf(content: Content, version: VersionRecord): Walk {
  const { answers, inputs, notSureTicks } = documentOf(version);
  const resolution = resolve(content, answers, inputs, notSureTicks);
  const pages = answerGroups(content, resolution).flatMap((group) => group.pages.map((page) => ({ ...page, section: group.id, sectionTitle: group.title })));
  return { content, resolution, pages, secondsLeft: secondsOf(resolution.path.filter(({ id }) => resolution.missing.includes(id))) };
}

/** Whether something on a page is not answered to its end. */
export function isOpenPage({ questions, answered }: Pick<AnswerPage, 'questions' | 'answered'>): boolean {
  return answered < questions.length;
}

/** Where to go on: the first page with an open question; null when there is none. */
export function firstOpenPage({ pages }: Pick<Walk, 'pages'>): WalkPage | null {
  return pages.find(isOpenPage) ?? null;
}

/**
 * The page after one: the next with an open question, from the beginning again after the last, so that what is known
 * already is not asked again. Where nothing is open, the next in order, for somebody who reads through.
 * @returns null after the last page of a walk in which nothing is open
 */
export function pageAfter({ pages }: Pick<Walk, 'pages'>, pageId: string): WalkPage | null {
  const at = pages.findIndex(({ id }) => id === pageId);
  const ahead = [...pages.slice(at + 1), ...pages.slice(0, Math.max(at, 0))];
  return ahead.find(isOpenPage) ?? (pages.some(isOpenPage) ? null : (pages[at + 1] ?? null));
}

/** The page before one in order; null at the first. */
export function pageBefore({ pages }: Pick<Walk, 'pages'>, pageId: string): WalkPage | null {
  return pages[pages.findIndex(({ id }) => id === pageId) - 1] ?? null;
}

/**
 * Where somebody goes after saving a page: to it again when an answer brought up a question that was not on it, else on.
 * @param walk after saving
 * @param shown ids of the questions that stood in the form
 */
export function whereNext(walk: Walk, pageId: string, shown: readonly string[]): WalkPage | null {
  const here = walk.pages.find(({ id }) => id === pageId);
  const isNew = here?.questions.some(({ id }) => !shown.includes(id) && walk.resolution.missing.includes(id)) ?? false;
  return here !== undefined && isNew ? here : pageAfter(walk, pageId);
}
