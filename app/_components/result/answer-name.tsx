import type { Content } from '@/lib/content/model';
import { questionFor } from '@/lib/questionnaire/names-set-by';
import type { QuestionAddress } from './document-parts';

interface AnswerNameProps { readonly content: Content; readonly addressOf: QuestionAddress; readonly name: string; readonly title: string }

/** The name of a control or an input, leading to the question that asks for it. */
export function AnswerName({ content, addressOf, name, title }: AnswerNameProps) {
  const question = questionFor(content, name);
  return question === undefined ? <>{title}</> : <a href={addressOf(question.id)}>{title}</a>;
}
