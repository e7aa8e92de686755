import type { Content, InputValue, Question } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Answer } from '@/lib/core/document';
import { NOT_SURE, validateAnswer } from './validate-answer';

type Answers = Readonly<Record<string, Answer>>;

export interface SectionProgress {
  readonly section: string;
  readonly title: string;
  /** questions of this section that apply */
  readonly asked: number;
  /** of these, answered; "not sure" counts, because somebody has looked at it */
  readonly answered: number;
  readonly notSure: number;
}

export interface Resolution {
  /** the questions that apply, in their order */
  readonly path: readonly Question[];
  /** the first that has no answer yet, null when all have one */
  readonly current: Question | null;
  /** the answers that count: given, fit for their question, and their question applies */
  readonly relevant: Answers;
  /** ids of questions with an answer that no longer counts, because an earlier answer took the question away */
  readonly orphaned: readonly string[];
  /** ids of answers that their question cannot take, or that no question asks for */
  readonly unfit: readonly string[];
  /** ids of questions that apply and have no answer */
  readonly missing: readonly string[];
  readonly progress: readonly SectionProgress[];
}

/**
 * Which questions apply, given these answers. Worked out from the first question every time, so that a
 * change to an early answer drops the later ones that hung on it; nothing is remembered between calls.
 * @param answers by question id, in any order; answers a question cannot take count as not given
 * @param writtenOver inputs that the document states itself: they win over answers (amendment A45)
 */
export function resolve(content: Content, answers: Answers, writtenOver: Readonly<Record<string, InputValue>> = {}): Resolution {
  const fit = fitAnswers(content, answers);
  const { shown } = resolveVenue(content, { id: '', title: '', answers: Object.fromEntries(fit), inputs: writtenOver });
  const path = content.questions.filter((question) => shown.has(question.id));
  const missing = path.filter((question) => !fit.has(question.id));
  return {
    path,
    current: missing[0] ?? null,
    relevant: Object.fromEntries([...fit].filter(([id]) => shown.has(id))),
    orphaned: [...fit.keys()].filter((id) => !shown.has(id)),
    unfit: Object.keys(answers).filter((id) => !fit.has(id)),
    missing: missing.map((question) => question.id),
    progress: progressOf(content, path, fit),
  };
}

/** In the order of the questions, so that the order in which answers came cannot matter. */
function fitAnswers(content: Content, answers: Answers): ReadonlyMap<string, Answer> {
  return new Map(content.questions.flatMap((question): [string, Answer][] => {
    const given = Object.hasOwn(answers, question.id) ? answers[question.id] : undefined;
    const check = validateAnswer(question, given);
    return check.ok ? [[question.id, check.answer]] : [];
  }));
}

function progressOf(content: Content, path: readonly Question[], fit: ReadonlyMap<string, Answer>): readonly SectionProgress[] {
  return content.sections.map(({ id, title }) => {
    const asked = path.filter((question) => question.section === id);
    const answered = asked.filter((question) => fit.has(question.id)).length;
    const notSure = asked.filter((question) => fit.get(question.id) === NOT_SURE).length;
    return { section: id, title, asked: asked.length, answered, notSure };
  });
}
