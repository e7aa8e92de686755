import type { ReactNode } from 'react';

interface PageHeadProps {
  /** where this page stands, a link back first */
  readonly crumb?: ReactNode;
  /** a sentence with the answer */
  readonly title: string;
  readonly lead?: ReactNode;
  readonly children?: ReactNode;
}

export function PageHead({ crumb, title, lead, children }: PageHeadProps) {
  return (
    <header className="head">
      {crumb === undefined ? null : <p className="crumb">{crumb}</p>}
      <h1>{title}</h1>
      {lead === undefined ? null : <p className="lead">{lead}</p>}
      {children}
    </header>
  );
}
