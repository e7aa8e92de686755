import type { Content, Question } from '@/lib/content/model';
import { controlsSetBy, inputsSetBy } from '@/lib/content/question-sets';

/** Controls and inputs that a question sets. */
export function namesSetBy(question: Question): readonly string[] {
  return [...inputsSetBy(question), ...controlsSetBy(question)];
}

/** The question that asks for a control or an input; each is asked by one, if at all. */
export function questionFor(content: Content, name: string): Question | undefined {
  return content.questions.find((question) => namesSetBy(question).includes(name));
}
