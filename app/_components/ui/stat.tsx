import type { ReactNode } from 'react';

interface StatProps {
  /** what the figure is of */
  readonly label: string;
  readonly figure: string;
  readonly unit?: string;
  /** every figure out of a model comes with its range */
  readonly range?: string;
}

export function Stats({ children }: { readonly children: ReactNode }) {
  return <dl className="stats">{children}</dl>;
}

/** One large, light figure; stands in `Stats`. */
export function Stat({ label, figure, unit, range }: StatProps) {
  return (
    <div className="stat">
      <dt>{label}</dt>
      <dd>{figure}{unit === undefined ? null : <span className="u">{unit}</span>}</dd>
      {range === undefined ? null : <dd className="range">{range}</dd>}
    </div>
  );
}
