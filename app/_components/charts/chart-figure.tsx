import type { ReactNode } from 'react';
import type { Scene } from '@/lib/charts/scene';
import { SceneSvg } from './scene-svg';

interface ChartFigureProps {
  readonly wide: Scene;
  readonly narrow: Scene;
  /** in plain words, under the picture */
  readonly caption: ReactNode;
  /** what belongs to the picture: a slider, a key, the table */
  readonly children?: ReactNode;
}

/** A picture at both widths, its words, and what belongs to it. */
export function ChartFigure({ wide, narrow, caption, children }: ChartFigureProps) {
  return (
    <figure className="fig">
      <SceneSvg scene={wide} shown="wide" />
      <SceneSvg scene={narrow} shown="narrow" />
      <figcaption>{caption}</figcaption>
      {children}
    </figure>
  );
}
