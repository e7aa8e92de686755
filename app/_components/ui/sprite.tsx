import { SAND_GRAINS, SAND_TILE } from '@/lib/charts/sand-grains';
import { GradeShapes } from './grade-shapes';
import { WORD_PATH } from './word-path';

/** Every drawing that is used more than once, in the page once. */
export function Sprite() {
  return (
    <svg className="sprite" width="0" height="0" aria-hidden="true" focusable="false">
      <GradeShapes />
      {Object.entries(STROKES).map(([name, d]) => (
        <symbol key={name} id={`i-${name}`} viewBox="0 0 16 16">
          <path d={d} fill="none" stroke="currentColor" strokeWidth="1.8" />
        </symbol>
      ))}
      {Object.entries(PLACES).map(([name, d]) => (
        <symbol key={name} id={`i-${name}`} viewBox="0 0 20 20">
          <path d={d} fill="none" stroke="currentColor" strokeWidth="1.8" />
        </symbol>
      ))}
      <symbol id="i-more" viewBox="0 0 20 20"><path d="M3 8.5h3v3H3zM8.5 8.5h3v3h-3zM14 8.5h3v3h-3z" fill="currentColor" /></symbol>
      <symbol id="i-bang" viewBox="0 0 16 16"><path d="M6.8 1.5h2.4v8.5H6.8zM6.8 12h2.4v2.5H6.8z" fill="currentColor" /></symbol>
      <symbol id="i-busy" viewBox="0 0 16 16"><path d="M7 0h2v4H7zM7 12h2v4H7zM0 7h4v2H0zM12 7h4v2h-4z" fill="currentColor" /></symbol>
      <Mark />
      <symbol id="wordmark" viewBox="0 0 133 26"><path d={WORD_PATH} fill="currentColor" /></symbol>
      <defs>
        <pattern id="sand" width={SAND_TILE} height={SAND_TILE} patternUnits="userSpaceOnUse">
          <g className="grains">{SAND_GRAINS.map(([x, y, r]) => <circle key={`${x} ${y}`} cx={x} cy={y} r={r} />)}</g>
        </pattern>
      </defs>
    </svg>
  );
}

/** Heap, rim and bucket, the bail cut out. */
function Mark() {
  return (
    <>
      <symbol id="mark" viewBox="0 0 32 32">
        <path d="M4.2 12.5C7 10.8 9.8 2.5 16 2.5s9 8.3 11.8 10z" fill="var(--mark-sand)" />
        <path d="M2.5 12.5h27V16h-27z" fill="currentColor" />
        <path mask="url(#bail)" d="M4.6 17.5h22.8l-2.7 11.7a1.8 1.8 0 0 1-1.75 1.3H9.05a1.8 1.8 0 0 1-1.75-1.3z" fill="currentColor" />
      </symbol>
      <defs>
        <mask id="bail" maskUnits="userSpaceOnUse" x="0" y="0" width="32" height="32">
          <path fill="#fff" d="M0 0h32v32H0z" />
          <path d="M6 18.5C8 27 24 27 26 18.5" fill="none" stroke="#000" strokeWidth="1.7" />
        </mask>
      </defs>
    </>
  );
}

/** Small drawings of one stroke, in a box of 16. */
const STROKES: Readonly<Record<string, string>> = {
  check: 'M3 8.5 6.5 12 13.5 4.5',
  cross: 'M3.5 3.5l9 9M12.5 3.5l-9 9',
  right: 'M2 8h11M9 3.8 13.2 8 9 12.2',
  left: 'M14 8H3M7 3.8 2.8 8 7 12.2',
  down: 'M8 2v11M3.8 9 8 13.2 12.2 9',
  plus: 'M8 2v12M2 8h12',
  minus: 'M2 8h12',
  file: 'M3.5 1.5h6l3 3v10h-9zM9.5 1.5v3h3',
  undo: 'M6 2.5 2.5 6 6 9.5M2.5 6h7a4 4 0 0 1 0 8H6',
};

/** The places of the bar, in a box of 20. */
const PLACES: Readonly<Record<string, string>> = {
  today: 'M3 16.5h14M5.5 13a4.5 4.5 0 0 1 9 0M10 3v3M3.3 6.3l2 2M16.7 6.3l-2 2',
  packs: 'M3 8h14v8H3zM7 8V3.5M11 8V5.5M3 12h14',
  assessments: 'M2.5 6h15v8h-15zM6 6v3.5M9.3 6v5M12.7 6v3.5',
  incidents: 'M5 17.5V3h10.5l-3 3.8 3 3.8H5',
  events: 'M10 2.3l6.8 3.9v7.6L10 17.7l-6.8-3.9V6.2zM10 2.3v15.4M3.2 6.2l13.6 7.6M16.8 6.2 3.2 13.8',
};
