import { Disclosure } from '@/app/_components/ui/disclosure';
import type { Question } from '@/lib/content/model';
import { keeperQuestions } from '@/lib/questionnaire/pages';
import { questionAnchor } from './question-parts';

/** What the caretaker knows better than the team, in one list to be passed on. */
export function KeeperList({ questions }: { readonly questions: readonly Question[] }) {
  const asked = keeperQuestions(questions);
  if (asked.length === 0) return null;
  return (
    <Disclosure summary={`${asked.length} questions for the building’s caretaker`}>
      <ul className="rows">
        {asked.map((question) => (
          <li key={question.id}>
            <a href={`#${questionAnchor(question.id)}`}>{question.text}</a>
            {question.keeper === true || question.kind !== 'ticks' ? null : <span className="small muted">{question.options.filter((line) => line.keeper === true).map((line) => line.label).join('; ')}</span>}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
