import type { Condition, Content, Question, StopCondition } from '@/lib/content/model';
import { namesSetBy } from '@/lib/questionnaire/names-set-by';

/** The questions whose answers a stop condition looks at, in the order of the content. */
export function questionsOfStop(content: Content, stop: StopCondition): readonly Question[] {
  const names = new Set(namesIn(stop.when));
  return content.questions.filter((question) => namesSetBy(question).some((name) => names.has(name)));
}

/** Controls and inputs that a condition names. What is derived rests on many answers and leads to none. */
function namesIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(namesIn);
  if ('any' in condition) return condition.any.flatMap(namesIn);
  if ('control' in condition) return [condition.control];
  if ('derived' in condition) return condition.input === undefined ? [] : [condition.input];
  return [condition.input];
}
