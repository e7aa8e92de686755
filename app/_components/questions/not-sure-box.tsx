'use client';

import { useFormField } from '@/app/_components/form/form-context';
import type { Question } from '@/lib/content/model';
import { NOT_SURE } from '@/lib/questionnaire/answer-fault';
import { answerField } from '@/lib/questionnaire/field-names';
import type { FormValues } from '@/lib/questionnaire/form-values';
import { NOT_SURE_HINT } from './choices-of';
import { allValues } from './one-value';

/** "Not sure" for a question that is answered in boxes: ticked, it wins over what stands in them. */
export function NotSureBox({ question, values }: { readonly question: Question; readonly values: FormValues }) {
  const name = answerField(question.id);
  const { typedAll } = useFormField(name);
  if (!question.notSure) return null;
  return (
    <label className="check">
      <input type="checkbox" name={name} value={NOT_SURE} defaultChecked={(typedAll ?? allValues(values, name)).includes(NOT_SURE)} />
      <span>Not sure<span className="hint">{NOT_SURE_HINT}</span></span>
    </label>
  );
}
