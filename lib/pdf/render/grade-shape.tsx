import { Circle, G, Path, Svg } from '@react-pdf/renderer';
import { GRADE_BOX, GRADE_SHAPES, type ShapePart } from '@/lib/charts/grade-shapes';
import type { Grade } from '@/lib/core/result';
import { GRADE_COLOURS } from './paper-colours';

/** A grade's shape beside its word in a text; never without the word. @param size points */
export function GradeShape({ grade, size }: { readonly grade: Grade | 'none'; readonly size: number }) {
  return (
    <Svg width={size} height={size} viewBox={`0 0 ${GRADE_BOX} ${GRADE_BOX}`}>
      <GradeParts grade={grade} colour={GRADE_COLOURS[grade].mark} />
    </Svg>
  );
}

/** The same inside of a picture. */
export function PlacedGradeShape({ grade, colour, x, y, size }: { readonly grade: Grade | 'none'; readonly colour: string; readonly x: number; readonly y: number; readonly size: number }) {
  return <G transform={`translate(${x}, ${y}) scale(${size / GRADE_BOX})`}><GradeParts grade={grade} colour={colour} /></G>;
}

function GradeParts({ grade, colour }: { readonly grade: Grade | 'none'; readonly colour: string }) {
  return GRADE_SHAPES[grade].map((part, index) => <Part key={index} part={part} colour={colour} />);
}

function Part({ part, colour }: { readonly part: ShapePart; readonly colour: string }) {
  const middle = GRADE_BOX / 2;
  if (part.kind === 'ring') return <Circle cx={middle} cy={middle} r={part.radius} fill="none" stroke={colour} strokeWidth={part.stroke} />;
  return <Path d={part.path} fill={colour} fillRule="evenodd" />;
}
