'use client';

import { useCallback } from 'react';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import type { Question } from '@/lib/content/model';
import type { SectionProgress } from '@/lib/questionnaire/resolve';
import { useOpenedByHash } from '../_state/use-opened-by-hash';
import type { WholeDocument } from '../_state/whole-document';
import { type EditAnswers, questionAnchor } from './question-parts';
import { QuestionRow } from './question-row';

interface AnswersSectionProps {
  readonly progress: SectionProgress;
  readonly questions: readonly Question[];
  readonly whole: WholeDocument;
  readonly edit: EditAnswers;
}

/** The questions of one section, put on the page when it is opened: seventy at once would be a wall. */
export function AnswersSection({ progress, questions, whole, edit }: AnswersSectionProps) {
  const ids = questions.map((question) => questionAnchor(question.id)).join(' ');
  const owns = useCallback((anchor: string) => anchor === `answers-${progress.section}` || ids.split(' ').includes(anchor), [progress.section, ids]);
  const { open, setOpen } = useOpenedByHash(owns);
  return (
    <details className="part" id={`answers-${progress.section}`} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary><span className="part-title">{progress.title}</span><span className="small muted">{countWords(progress)}</span></summary>
      {open ? (
        <>
          <ol className="questions">{questions.map((question) => <QuestionRow key={question.id} question={question} whole={whole} edit={edit} />)}</ol>
          <DisclosureTable
            summary="Where these questions come from"
            caption={`Sources of the questions on ${progress.title}`}
            columns={[{ head: 'Question', cell: (question) => question.text }, { head: 'Source', cell: (question) => question.source }]}
            rows={questions}
            rowKey={(question) => question.id}
          />
        </>
      ) : null}
    </details>
  );
}

function countWords({ asked, answered, notSure }: SectionProgress): string {
  const unsure = notSure === 0 ? '' : `, ${notSure} not sure`;
  return `${answered} of ${asked} answered${unsure}`;
}
