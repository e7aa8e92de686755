import type { ReactNode } from 'react';

type Props = {
  readonly title: string;
  /** The level its heading has where it stands: one below the heading it stands under. */
  readonly level: 2 | 3;
  readonly children: ReactNode;
};

/** What stands where there is nothing yet: it says the next step. */
export function Empty({ title, level, children }: Props) {
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <div className="empty">
      <Heading>{title}</Heading>
      {children}
    </div>
  );
}
