import type { CellRole, FillRole, LineMark, LineRole, Mark, PathMark, RectMark, Scene } from '@/lib/charts/scene';

interface SceneSvgProps {
  readonly scene: Scene;
  /** both widths of a chart are in the page; the style sheet shows the one that fits */
  readonly shown?: 'wide' | 'narrow' | 'always';
  /** false when a sentence beside it says the same: then it is hidden from assistive technology */
  readonly told?: boolean;
}

/** Draws a scene; a role becomes a class, and the style sheet knows the colours. */
export function SceneSvg({ scene, shown = 'always', told = true }: SceneSvgProps) {
  const fit = { wide: ' at-672', narrow: ' at-326', always: '' }[shown];
  const spoken = told ? { role: 'img', 'aria-label': scene.title } : { 'aria-hidden': true };
  return (
    <svg className={`chart${fit}`} viewBox={`0 0 ${scene.width} ${scene.height}`} {...spoken} focusable="false">
      {scene.marks.map((mark, index) => <MarkShape key={index} mark={mark} />)}
    </svg>
  );
}

function MarkShape({ mark }: { readonly mark: Mark }) {
  switch (mark.kind) {
    case 'line': return <LineShape mark={mark} />;
    case 'path': return <PathShape mark={mark} />;
    case 'rect': return <RectShape mark={mark} />;
    case 'circle': return <circle className={roleClass(mark.role)} cx={mark.cx} cy={mark.cy} r={mark.r} />;
    case 'grade': return <svg className={mark.on === 'cell' ? `on-c-${mark.grade}` : `m-${mark.grade}`} x={mark.x} y={mark.y} width={mark.size} height={mark.size}><use href={`#g-${mark.grade}`} /></svg>;
    case 'text': return <text className={`r-${mark.role}${mark.strong === true ? ' strong' : ''}${mark.halo === true ? ' halo' : ''}`} x={mark.x} y={mark.y} textAnchor={mark.anchor}>{mark.text}</text>;
  }
}

function LineShape({ mark }: { readonly mark: LineMark }) {
  return <line className={`l-${mark.role}`} x1={mark.x1} y1={mark.y1} x2={mark.x2} y2={mark.y2} style={strokeStyle(mark.width)} />;
}

function PathShape({ mark }: { readonly mark: PathMark }) {
  if (isLine(mark.role)) return <path className={`l-${mark.role}`} d={mark.d} style={strokeStyle(mark.width)} />;
  if (mark.role === 'grain') return <><path className="r-grain-wash" d={mark.d} /><path fill="url(#sand)" d={mark.d} /></>;
  return <path className={roleClass(mark.role)} d={mark.d} />;
}

function RectShape({ mark }: { readonly mark: RectMark }) {
  const box = { x: mark.x, y: mark.y, width: mark.width, height: mark.height };
  if (mark.role === 'grain' || mark.role === 'grain-edge') {
    return <><rect className="r-grain-wash" {...box} /><rect fill="url(#sand)" {...box} />{mark.role === 'grain-edge' ? <rect className="r-grain-edge" {...box} /> : null}</>;
  }
  return <rect className={roleClass(mark.role)} {...box} />;
}

/** A style, because the role's class sets a width too and a style is what wins over it. */
function strokeStyle(width: number | undefined): { readonly strokeWidth: number } | undefined {
  return width === undefined ? undefined : { strokeWidth: width };
}

const LINE_ROLES: ReadonlySet<string> = new Set<LineRole>(['axis', 'tick', 'grid', 'curve', 'thread', 'limit', 'lesser', 'ember', 'path', 'path-gap', 'hatch', 'hatch-todo']);

/** "ember" is a line and a fill; a path with it is a stroke, as all hatching is. */
function isLine(role: LineRole | FillRole): role is LineRole { return LINE_ROLES.has(role); }

function roleClass(role: FillRole | CellRole): string {
  return role.startsWith('cell-') ? role.replace('cell-', 'c-') : `r-${role}`;
}
