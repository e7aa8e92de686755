import type { SeverityClass } from '@/lib/content/model';
import type { GradeOrNone } from '@/lib/core/result';
import { gradeWarning, gradeWord } from '@/lib/wording/grades';

interface GradeMarkProps {
  readonly grade: GradeOrNone;
  /** the school's own word for this grade, when its matrix has one */
  readonly word?: string;
  /** class of the end that decides the grade; what could kill says so beside a mild grade */
  readonly severity?: SeverityClass;
  readonly size?: 'text' | 'big';
}

/** A grade as word, shape and colour. The only place on screen that draws one outside a chart. */
export function GradeMark({ grade, word, severity, size = 'text' }: GradeMarkProps) {
  const kind = grade === 'not applicable' ? 'none' : grade;
  const warning = severity === undefined ? null : gradeWarning(grade, severity);
  return (
    <span className={`grade g-${kind}${size === 'big' ? ' big' : ''}${warning === null ? '' : ' warned'}`}>
      <svg aria-hidden="true" focusable="false">
        <use href={`#g-${kind}`} />
      </svg>
      {gradeWord(grade, word)}{warning === null ? '' : ', '}
      {warning === null ? null : <span className="kill">{warning}</span>}
    </span>
  );
}
