import { Circle, Line, Path, Rect, Svg, Text } from '@react-pdf/renderer';
import { TEXT_SIZE, type CellRole, type Mark, type PathMark, type RectMark, type Scene, type TextMark } from '@/lib/charts/scene';
import { textBox } from '@/lib/charts/text-box';
import { PAPER_FONTS } from './fonts/font-files';
import { PlacedGradeShape } from './grade-shape';
import { COLOUR, GRADE_COLOURS } from './paper-colours';
import { letters } from './paper-type';
import { SandPath, SandRect } from './sand';
import { FILLS, isLineRole, LINES, TEXT_COLOUR } from './scene-styles';

/**
 * Draws a scene on paper. What it tells stands beside it in words, as a paper is not read out from its pictures.
 * @param width points; @throws where its texts would be too small to read
 */
export function SceneDrawing({ scene, width }: { readonly scene: Scene; readonly width: number }) {
  letters((TEXT_SIZE * width) / scene.width);
  return (
    <Svg width={width} height={(scene.height * width) / scene.width} viewBox={`0 0 ${scene.width} ${scene.height}`}>
      {scene.marks.map((mark, index) => <MarkShape key={index} mark={mark} id={`sand-${index}`} scene={scene} />)}
    </Svg>
  );
}

function MarkShape({ mark, id, scene }: { readonly mark: Mark; readonly id: string; readonly scene: Scene }) {
  switch (mark.kind) {
    case 'line': return <Line x1={mark.x1} y1={mark.y1} x2={mark.x2} y2={mark.y2} {...LINES[mark.role]} {...widthOf(mark.width)} />;
    case 'path': return <PathShape mark={mark} id={id} scene={scene} />;
    case 'rect': return <RectShape mark={mark} />;
    case 'circle': return mark.role === 'grain' || mark.role === 'grain-edge' ? null : <Circle cx={mark.cx} cy={mark.cy} r={mark.r} {...FILLS[mark.role]} />;
    case 'grade': return <PlacedGradeShape grade={mark.grade} x={mark.x} y={mark.y} size={mark.size} colour={mark.on === 'cell' ? GRADE_COLOURS[mark.grade].onCell : GRADE_COLOURS[mark.grade].mark} />;
    case 'text': return <TextShape mark={mark} />;
  }
}

function PathShape({ mark, id, scene }: { readonly mark: PathMark; readonly id: string; readonly scene: Scene }) {
  const { role, d } = mark;
  if (isLineRole(role)) return <Path d={d} fill="none" {...LINES[role]} {...widthOf(mark.width)} />;
  if (role === 'grain' || role === 'grain-edge') return <SandPath mark={mark} id={id} sheet={{ left: 0, top: 0, right: scene.width, bottom: scene.height }} />;
  return <Path d={d} {...FILLS[role]} />;
}

function RectShape({ mark }: { readonly mark: RectMark }) {
  const { role, x, y, width, height } = mark;
  if (role === 'grain' || role === 'grain-edge') return <SandRect mark={mark} />;
  return <Rect x={x} y={y} width={width} height={height} {...(isCell(role) ? { fill: GRADE_COLOURS[gradeOf(role)].cell } : FILLS[role])} />;
}

/** Where a text needs a clear edge it gets a patch of paper: letters with an outline cannot be had here. */
function TextShape({ mark }: { readonly mark: TextMark }) {
  const { left, right, top, bottom } = textBox(mark);
  return (
    <>
      {mark.halo === true ? <Rect x={left - 1.5} y={top} width={right - left + 3} height={bottom - top} fill={COLOUR.sheet} /> : null}
      <Text x={mark.x} y={mark.y} textAnchor={mark.anchor} fill={TEXT_COLOUR[mark.role]} style={{ fontFamily: PAPER_FONTS, fontSize: TEXT_SIZE, fontWeight: mark.strong === true ? 700 : 400 }}>{mark.text}</Text>
    </>
  );
}

const widthOf = (width: number | undefined): { readonly strokeWidth?: number } => (width === undefined ? {} : { strokeWidth: width });

function isCell(role: RectMark['role']): role is CellRole { return role.startsWith('cell-'); }

function gradeOf(role: CellRole): keyof typeof GRADE_COLOURS {
  return ({ 'cell-low': 'low', 'cell-moderate': 'moderate', 'cell-high': 'high', 'cell-extreme': 'extreme', 'cell-none': 'none' } as const)[role];
}
