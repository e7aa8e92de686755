'use client';

import { memo } from 'react';
import { Progress } from '@/app/_components/ui/progress';
import { Section } from '@/app/_components/ui/section';
import type { InputValue } from '@/lib/content/model';
import type { Answer } from '@/lib/core/document';
import { resolve } from '@/lib/questionnaire/resolve';
import { useContent } from '../_state/content-context';
import { partOf, type WholeDocument } from '../_state/whole-document';
import { AnswersSection } from './answers-section';
import type { EditAnswers } from './question-parts';

/** Every answer of the document, to be changed in place. Questions that an answer takes away go at once. */
export const AnswersPart = memo(function AnswersPart({ whole, edit }: { readonly whole: WholeDocument; readonly edit: EditAnswers }) {
  const resolution = resolve(
    useContent(),
    partOf(whole, 'answers') as Readonly<Record<string, Answer>>,
    partOf(whole, 'inputs') as Readonly<Record<string, InputValue>>,
  );
  const asked = resolution.path.length;
  return (
    <Section id="answers" title="The answers" aside={`${asked} questions apply`}>
      <p className="after">Change an answer and everything above is worked out again. Nobody expects you to know it all: “Not sure” is an answer.</p>
      <Progress sections={resolution.progress.map((each) => ({ id: each.section, title: each.title, questions: each.asked, answered: each.answered, notSure: each.notSure }))} />
      <div className="parts">
        {resolution.progress.map((progress) => (
          <AnswersSection
            key={progress.section}
            progress={progress}
            questions={resolution.path.filter((question) => question.section === progress.section)}
            whole={whole}
            edit={edit}
          />
        ))}
      </div>
      {resolution.orphaned.length === 0 ? null : <p className="small muted">{resolution.orphaned.length === 1 ? 'One answer does not count now, because its question does not apply. It is kept.' : `${resolution.orphaned.length} answers do not count now, because their questions do not apply. They are kept.`}</p>}
    </Section>
  );
});
