import { GRADE_BOX, GRADE_SHAPES, type ShapePart } from '@/lib/charts/grade-shapes';

/** The symbols of the grades, out of the same shapes that paper uses. */
export function GradeShapes() {
  return Object.entries(GRADE_SHAPES).map(([grade, parts]) => (
    <symbol key={grade} id={`g-${grade}`} viewBox={`0 0 ${GRADE_BOX} ${GRADE_BOX}`}>
      {parts.map((part, index) => <Part key={index} part={part} />)}
    </symbol>
  ));
}

function Part({ part }: { readonly part: ShapePart }) {
  const middle = GRADE_BOX / 2;
  if (part.kind === 'ring') return <circle cx={middle} cy={middle} r={part.radius} fill="none" stroke="currentColor" strokeWidth={part.stroke} />;
  return <path d={part.path} fill="currentColor" fillRule="evenodd" />;
}
