'use client';

import { memo } from 'react';
import { Progress } from '@/app/_components/ui/progress';
import { Section } from '@/app/_components/ui/section';
import type { InputValue } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { answerGroups, secondsOf } from '@/lib/questionnaire/pages';
import { type Resolution, resolve } from '@/lib/questionnaire/resolve';
import { useContent } from '../_state/use-content';
import { partOf, type WholeDocument } from '../_state/whole-document';
import { aboutTime } from '@/app/_components/questions/about-time';
import { AnswersSection } from './answers-section';
import { KeeperList } from './keeper-list';
import type { EditAnswers } from './question-parts';

/** Every answer of the document, to be changed in place. Questions that an answer takes away go at once. */
export const AnswersPart = memo(function AnswersPart({ whole, edit }: { readonly whole: WholeDocument; readonly edit: EditAnswers }) {
  const content = useContent();
  const resolution = resolve(
    content,
    partOf(whole, 'answers') as Readonly<Record<string, Answer>>,
    partOf(whole, 'inputs') as Readonly<Record<string, InputValue>>,
    partOf(whole, 'notSureTicks') as Readonly<Record<string, readonly string[]>>,
  );
  const groups = answerGroups(content, resolution);
  const pages = groups.reduce((sum, group) => sum + group.pages.length, 0);
  return (
    <Section id="answers" title="The answers" aside={`${resolution.path.length} questions on ${pages} pages`}>
      <p className="after">Change an answer and everything above is worked out again. Nobody expects you to know it all: “Not sure” is an answer, and a blank counts as not sure.</p>
      <div className="after">
        <Progress
          sections={resolution.progress.map((each) => ({ id: each.section, title: each.title, questions: each.asked, answered: each.answered, notSure: each.notSure }))}
          aside={timeLeft(resolution)}
        />
      </div>
      <KeeperList questions={resolution.path} />
      <div className="parts">{groups.map((group) => <AnswersSection key={group.id} group={group} whole={whole} edit={edit} />)}</div>
      {resolution.orphaned.length === 0 ? null : <p className="small muted">{resolution.orphaned.length === 1 ? 'One answer does not count now, because its question does not apply. It is kept.' : `${resolution.orphaned.length} answers do not count now, because their questions do not apply. They are kept.`}</p>}
    </Section>
  );
});

function timeLeft({ path, missing }: Resolution): string | undefined {
  const seconds = secondsOf(path.filter((question) => missing.includes(question.id)));
  if (seconds === null) return undefined;
  return seconds === 0 ? 'nothing left open' : `${aboutTime(seconds)} for what is left`;
}
