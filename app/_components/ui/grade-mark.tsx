import type { GradeOrNone } from '@/lib/core/result';
import { COULD_KILL } from '@/lib/wording/could-kill';
import { gradeWord } from '@/lib/wording/grades';

interface GradeMarkProps {
  readonly grade: GradeOrNone;
  /** the school's own word for this grade, when its matrix has one */
  readonly word?: string;
  /** what could kill says so beside its grade, whatever the grade */
  readonly couldKill?: boolean;
  readonly size?: 'text' | 'big';
}

/** A grade as word, shape and colour. The only place on screen that draws one outside a chart. */
export function GradeMark({ grade, word, couldKill = false, size = 'text' }: GradeMarkProps) {
  const kind = grade === 'not applicable' ? 'none' : grade;
  return (
    <span className={`grade g-${kind}${size === 'big' ? ' big' : ''}${couldKill ? ' warned' : ''}`}>
      <svg aria-hidden="true" focusable="false">
        <use href={`#g-${kind}`} />
      </svg>
      {gradeWord(grade, word)}{couldKill ? ', ' : ''}
      {couldKill ? <span className="kill">{COULD_KILL}</span> : null}
    </span>
  );
}
