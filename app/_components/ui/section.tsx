import type { ReactNode } from 'react';

interface SectionProps {
  readonly id: string;
  readonly title: string;
  /** small, at the end of the title's line */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** A part of the sheet, opened by a rule. */
export function Section({ id, title, aside, children }: SectionProps) {
  return (
    <section className="section" id={id} aria-labelledby={`${id}-title`}>
      <div className="title">
        <h2 id={`${id}-title`}>{title}</h2>
        {typeof aside === 'string' ? <p>{aside}</p> : aside}
      </div>
      {children}
    </section>
  );
}
