import { z } from 'zod';
import type { Question } from '@/lib/content/model';
import type { Answer, TickAnswer } from '@/lib/core/document';
import { line, listOf } from '@/lib/forms/fields';
import { linesSaid } from '@/lib/questionnaire/ticks';
import { DAY_MS } from '@/lib/units/time';
import { isOpen } from './standing';

export const CARETAKER_DAYS = ['3', '7', '14', '30'] as const;

/** Sending questions to somebody without an account. */
export const SendQuestionsSchema = z.object({
  versionId: line('No assessment was named'),
  forWhom: line('Enter who is to answer, such as the caretaker’s name', 100),
  days: z.enum(CARETAKER_DAYS, { error: 'Choose how long the link is to work' }).transform(Number),
  questions: listOf(z.string()).refine((ids) => ids.length > 0, 'Tick at least one question'),
});
export type SendQuestionsInput = z.output<typeof SendQuestionsSchema>;

/** Taking a link back before it ends. */
export const TakeLinkBackSchema = z.object({ versionId: line('No assessment was named'), linkId: line('No link was named') });

/** Until when a link made now can be used. */
export function caretakerLinkEnd(madeAt: Date, days: number): Date { return new Date(madeAt.getTime() + days * DAY_MS); }

export interface CaretakerLinkState {
  readonly expiresAt: Date;
  readonly revokedAt: Date | null;
  /** state of the version that the questions belong to */
  readonly state: string;
}
export type CaretakerVerdict<Link> = { readonly ok: true; readonly link: Link } | { readonly ok: false; readonly reason: string };

/** Whether a link can still be used, and why not. Whoever has it may answer and correct until it ends. */
export function judgeCaretakerLink<Link extends CaretakerLinkState>(link: Link | null, now: Date): CaretakerVerdict<Link> {
  if (link === null) return { ok: false, reason: 'This link is not one of ours. Perhaps a part of it is missing: copy it again, whole.' };
  if (link.revokedAt !== null) return { ok: false, reason: 'This link was taken back. Ask the person who sent it for another.' };
  if (link.expiresAt <= now) return { ok: false, reason: 'This link has ended. Ask the person who sent it for another.' };
  if (!isOpen(link.state)) return { ok: false, reason: 'The answers have gone to the safety officer meanwhile, so nothing can be changed here. Tell the person who sent you the link.' };
  return { ok: true, link };
}

/** A question as the caretaker sees it: whole, or only with the lines that are for them. */
export function askedOfCaretaker(question: Question): Question {
  if (question.keeper === true || question.kind !== 'ticks') return question;
  return { ...question, options: question.options.filter((each) => each.keeper === true) };
}

/** The answer to a whole question after somebody answered the lines that were for them: other lines stay as they were. */
export function withCaretakerLines(question: Question, before: Answer | undefined, notSureTicks: readonly string[], given: Answer | null): Answer | null {
  if (question.kind !== 'ticks' || question.keeper === true) return given;
  const theirs = question.options.filter((each) => each.keeper === true).map(({ id }) => id);
  const others = Object.entries(linesSaid(question, before, notSureTicks)).filter(([id]) => !theirs.includes(id));
  const own: TickAnswer = given === null ? {} : linesSaid(question, given, []);
  const all = { ...Object.fromEntries(others), ...own };
  return Object.keys(all).length === 0 ? null : all;
}
