import type { AnswerGroup } from '@/lib/questionnaire/pages';
import type { WholeDocument } from '../_state/whole-document';
import { aboutTime } from '@/app/_components/questions/about-time';
import { AnswersPage } from './answers-page';
import type { EditAnswers } from './question-parts';

interface AnswersSectionProps { readonly group: AnswerGroup; readonly whole: WholeDocument; readonly edit: EditAnswers }

/** A section with its pages. A section of one page is that page, under the section's name. */
export function AnswersSection({ group, whole, edit }: AnswersSectionProps) {
  const [first, ...others] = group.pages;
  if (first === undefined) return null;
  if (others.length === 0) return <AnswersPage page={{ ...first, title: group.title }} alsoHere={`answers-${group.id}`} headingLevel={3} whole={whole} edit={edit} />;
  return (
    <div className="part-group">
      <div className="part-head">
        <h3>{group.title}</h3>
        {group.seconds === null ? null : <p className="small muted">{group.pages.length} pages, {aboutTime(group.seconds)}</p>}
      </div>
      {group.pages.map((page, index) => <AnswersPage key={page.id} page={page} alsoHere={index === 0 ? `answers-${group.id}` : null} headingLevel={4} whole={whole} edit={edit} />)}
    </div>
  );
}
