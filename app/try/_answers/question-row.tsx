'use client';

import { Button } from '@/app/_components/ui/button';
import { Notice } from '@/app/_components/ui/notice';
import type { Content, Question } from '@/lib/content/model';
import { useContent } from '../_state/use-content';
import { answerOf, type WholeDocument } from '../_state/whole-document';
import { ChoiceQuestion } from './choice-question';
import { MultiQuestion } from './multi-question';
import { NumberQuestion } from './number-question';
import { type Override, overridesOf, withoutOverride } from './overrides';
import { changeOf, type EditAnswers, NotAnswered } from './question-parts';
import { TextQuestion } from './text-question';
import { TicksQuestion } from './ticks-question';

interface QuestionRowProps { readonly question: Question; readonly whole: WholeDocument; readonly edit: EditAnswers }

/** One question with its answer, and what the document writes over it. */
export function QuestionRow({ question, whole, edit }: QuestionRowProps) {
  const content = useContent();
  return (
    <li className="question">
      <AnyQuestion question={question} whole={whole} edit={edit} />
      {question.kind !== 'ticks' && answerOf(whole, question.id) === undefined ? <NotAnswered /> : null}
      {overridesOf(question, whole).map((override) => (
        <Notice level={3} key={`${override.part} ${override.id}`} title="The document itself says otherwise">
          <p>{titleOf(content, override)}: <b>{override.value}</b>. That wins over the answer above.</p>
          <p><Button size="small" onClick={() => edit.change((document) => withoutOverride(document, override), changeOf(question))}>Let the answer count</Button></p>
        </Notice>
      ))}
    </li>
  );
}

function AnyQuestion({ question, whole, edit }: QuestionRowProps) {
  const answer = answerOf(whole, question.id);
  if (question.kind === 'choice') return <ChoiceQuestion question={question} answer={answer} edit={edit} />;
  if (question.kind === 'multi') return <MultiQuestion question={question} whole={whole} edit={edit} />;
  if (question.kind === 'ticks') return <TicksQuestion question={question} whole={whole} edit={edit} />;
  if (question.kind === 'number') return <NumberQuestion question={question} answer={answer} edit={edit} />;
  return <TextQuestion question={question} answer={answer} edit={edit} />;
}

function titleOf(content: Content, { part, id }: Override): string {
  const all: readonly { readonly id: string; readonly title: string }[] = part === 'states' ? content.controls : content.inputs;
  return all.find((one) => one.id === id)?.title ?? id;
}
