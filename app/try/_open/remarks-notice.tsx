import { Notice } from '@/app/_components/ui/notice';
import type { Content, Question } from '@/lib/content/model';
import type { DocumentRemark } from '@/lib/interchange/checks/remark';
import { questionAnchor } from '../_answers/question-parts';

interface RemarksNoticeProps { readonly remarks: readonly DocumentRemark[]; readonly content: Content }

/** What is odd about the document: it was worked out, but somebody should know. */
export function RemarksNotice({ remarks, content }: RemarksNoticeProps) {
  if (remarks.length === 0) return null;
  return (
    <div className="after">
      <Notice kind="not sure" level={2} title="About this document">
        <ul className="rows">{remarks.map((remark) => <li key={`${remark.path} ${remark.remark}`}><Remark remark={remark} content={content} /></li>)}</ul>
      </Notice>
    </div>
  );
}

function Remark({ remark: { path, remark }, content }: { readonly remark: DocumentRemark; readonly content: Content }) {
  const question = questionAt(path, content);
  if (path === '$' || path === '$.contentVersion') return <span>The document {remark}.</span>;
  if (question === undefined) return <span><code>{path}</code> {remark}.</span>;
  return <span>The answer to <a href={`#${questionAnchor(question.id)}`}>“{question.text}”</a> {remark}.</span>;
}

/** The question a place in the document belongs to. */
function questionAt(path: string, { questions }: Content): Question | undefined {
  const [, plain, quoted] = /^\$\.answers(?:\.([A-Za-z0-9_]+)|\["([^"]+)"\])/.exec(path) ?? [];
  return questions.find(({ id }) => id === (plain ?? quoted));
}
