import type { Content } from '@/lib/content/model';
import { questionFor } from '../_answers/names-set-by';
import { questionAnchor } from '../_answers/question-parts';

/** The name of a control or an input, leading to the question that asks for it. */
export function AnswerName({ content, name, title }: { readonly content: Content; readonly name: string; readonly title: string }) {
  const question = questionFor(content, name);
  return question === undefined ? <>{title}</> : <a href={`#${questionAnchor(question.id)}`}>{title}</a>;
}
