import type { Content, InputValue, Question } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE } from './answer-fault';
import { blankLines } from './ticks';
import { validateAnswer } from './validate-answer';

type Answers = Readonly<Record<string, Answer>>;
type NotSureTicks = Readonly<Record<string, readonly string[]>>;

export interface SectionProgress {
  readonly section: string;
  readonly title: string;
  /** questions of this section that apply */
  readonly asked: number;
  /** of these, answered to the end; "not sure" counts, because somebody has looked at it */
  readonly answered: number;
  readonly notSure: number;
}

export interface Resolution {
  /** the questions that apply, in their order */
  readonly path: readonly Question[];
  /** the first that is not answered to its end, null when all are */
  readonly current: Question | null;
  /** the answers that count: given, fit for their question, and their question applies */
  readonly relevant: Answers;
  /** ids of questions with an answer that no longer counts, because an earlier answer took the question away */
  readonly orphaned: readonly string[];
  /** ids of answers that their question cannot take, or that no question asks for */
  readonly unfit: readonly string[];
  /** ids of questions that apply and have no answer, or a page of ticks with a line nobody has answered */
  readonly missing: readonly string[];
  readonly progress: readonly SectionProgress[];
}

/**
 * Which questions apply, given these answers. Worked out from the first question every time, so that a
 * change to an early answer drops the later ones that hung on it; nothing is remembered between calls.
 * @param answers by question id, in any order; answers a question cannot take count as not given
 * @param writtenOver inputs that the document states itself: they win over answers (amendment A45)
 * @param notSureTicks lines said to be not known beside a list, by question id
 */
export function resolve(content: Content, answers: Answers, writtenOver: Readonly<Record<string, InputValue>> = {}, notSureTicks: NotSureTicks = {}): Resolution {
  const fit = fitAnswers(content, answers);
  const { shown } = resolveVenue(content, { id: '', title: '', answers: Object.fromEntries(fit), inputs: writtenOver });
  const path = content.questions.filter((question) => shown.has(question.id));
  const missing = path.filter((question) => !isAnswered(question, fit.get(question.id), notSureTicks));
  return {
    path,
    current: missing[0] ?? null,
    relevant: Object.fromEntries([...fit].filter(([id]) => shown.has(id))),
    orphaned: [...fit.keys()].filter((id) => !shown.has(id)),
    unfit: Object.keys(answers).filter((id) => !fit.has(id)),
    missing: missing.map((question) => question.id),
    progress: progressOf(content, path, missing, fit),
  };
}

/** A page of ticks is answered when every line is: a line that an older list could not name is still open. */
function isAnswered(question: Question, answer: Answer | undefined, notSureTicks: NotSureTicks): boolean {
  if (answer === undefined) return false;
  return question.kind !== 'ticks' || blankLines(question, answer, notSureTicks[question.id] ?? []).length === 0;
}

/** In the order of the questions, so that the order in which answers came cannot matter. */
function fitAnswers(content: Content, answers: Answers): ReadonlyMap<string, Answer> {
  return new Map(content.questions.flatMap((question): [string, Answer][] => {
    const given = Object.hasOwn(answers, question.id) ? answers[question.id] : undefined;
    const check = validateAnswer(question, given);
    return check.ok ? [[question.id, check.answer]] : [];
  }));
}

function progressOf(content: Content, path: readonly Question[], missing: readonly Question[], fit: ReadonlyMap<string, Answer>): readonly SectionProgress[] {
  return content.sections.map(({ id, title }) => {
    const asked = path.filter((question) => question.section === id);
    const answered = asked.filter((question) => !missing.includes(question)).length;
    const notSure = asked.filter((question) => fit.get(question.id) === NOT_SURE).length;
    return { section: id, title, asked: asked.length, answered, notSure };
  });
}
