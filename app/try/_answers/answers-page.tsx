'use client';

import { useCallback } from 'react';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import type { AnswerPage } from '@/lib/questionnaire/pages';
import { blankLines } from '@/lib/questionnaire/ticks';
import { useOpenedByHash } from '../_state/use-opened-by-hash';
import { answerOf, notSureTicksOf, type WholeDocument } from '../_state/whole-document';
import { aboutTime } from '@/app/_components/questions/about-time';
import { type EditAnswers, questionAnchor } from './question-parts';
import { QuestionRow } from './question-row';

interface AnswersPageProps {
  readonly page: AnswerPage;
  /** anchors that lead here besides those of the page and its questions */
  readonly alsoHere: string | null;
  readonly headingLevel: 3 | 4;
  readonly whole: WholeDocument;
  readonly edit: EditAnswers;
}

/** The questions of one page, put there when it is opened: seventy at once would be a wall. */
export function AnswersPage({ page, alsoHere, headingLevel, whole, edit }: AnswersPageProps) {
  // Of all its questions, or an answer that shows or hides one would look like a new address and move the page.
  const anchors = [`answers-${page.id}`, ...(alsoHere === null ? [] : [alsoHere]), ...page.all.map(questionAnchor)].join(' ');
  const owns = useCallback((anchor: string) => anchors.split(' ').includes(anchor), [anchors]);
  const { open, setOpen } = useOpenedByHash(owns);
  const Heading = headingLevel === 3 ? 'h3' : 'h4';
  return (
    <details className={headingLevel === 3 ? 'part alone' : 'part'} id={`answers-${page.id}`} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary><Heading className="part-title">{page.title}</Heading><span className="small muted">{countWords(page, whole)}</span></summary>
      {open ? (
        <>
          <ol className="questions">{page.questions.map((question) => <QuestionRow key={question.id} question={question} whole={whole} edit={edit} />)}</ol>
          <DisclosureTable
            summary="Where these questions come from"
            caption={`Sources of the questions on ${page.title}`}
            columns={[{ head: 'Question', cell: (question) => question.text }, { head: 'Source', cell: (question) => question.source }]}
            rows={page.questions}
            rowKey={(question) => question.id}
          />
        </>
      ) : null}
    </details>
  );
}

function countWords({ questions, answered, notSure, seconds }: AnswerPage, whole: WholeDocument): string {
  const unsure = notSure === 0 ? '' : `, ${notSure} not sure`;
  const blanks = questions.flatMap((question) => (question.kind === 'ticks' && answerOf(whole, question.id) !== undefined ? blankLines(question, answerOf(whole, question.id), notSureTicksOf(whole, question.id)) : [])).length;
  const blank = blanks === 0 ? '' : `, ${blanks} ${blanks === 1 ? 'line' : 'lines'} blank`;
  const time = seconds === null ? '' : `, ${aboutTime(seconds)}`;
  return `${answered} of ${questions.length} answered${unsure}${blank}${time}`;
}
