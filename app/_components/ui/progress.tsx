import type { CSSProperties } from 'react';

export interface ProgressSection {
  readonly id: string;
  readonly title: string;
  readonly questions: number;
  readonly answered: number;
  /** of the answered, how many with "not sure" */
  readonly notSure: number;
}

interface ProgressProps {
  readonly sections: readonly ProgressSection[];
  /** id of the section one is in */
  readonly here?: string;
  /** at the end of the line, e.g. about how long it will take */
  readonly aside?: string;
}

/** One segment a section, as wide as its questions; ink where answered, sand where not sure. */
export function Progress({ sections, here, aside }: ProgressProps) {
  const answered = sections.reduce((sum, section) => sum + section.answered, 0);
  const questions = sections.reduce((sum, section) => sum + section.questions, 0);
  const current = sections.find((section) => section.id === here);
  return (
    <div className="progress" role="group" aria-label="Progress">
      <div className="bar" aria-hidden="true">
        {sections.map((section) => <i key={section.id} className={section.id === here ? 'here' : undefined} style={segment(section)} title={section.title} />)}
      </div>
      <p><span>{current === undefined ? '' : `${current.title}: ${current.answered} of ${current.questions}. All: `}{answered} of {questions} answered</span>{aside === undefined ? null : <span>{aside}</span>}</p>
    </div>
  );
}

/** Custom properties that the style sheet turns into widths. */
function segment(section: ProgressSection): CSSProperties {
  const share = (part: number): number => (section.questions === 0 ? 0 : part / section.questions);
  const widths = { '--n': section.questions, '--done': share(section.answered), '--sure': share(section.answered - section.notSure) };
  return widths as CSSProperties;
}
