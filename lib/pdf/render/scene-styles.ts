import type { FillRole, LineRole, TextRole } from '@/lib/charts/scene';
import { COLOUR } from './paper-colours';

export interface Stroke { readonly stroke: string; readonly strokeWidth: number; readonly strokeDasharray?: string }
export interface Fill { readonly fill: string; readonly stroke?: string; readonly strokeWidth?: number }

/** What the style sheet of the screen is to a scene there. The two are held together by a test. */
export const TEXT_COLOUR: Readonly<Record<TextRole, string>> = { ink: COLOUR.ink, 'ink-2': COLOUR.ink2, 'on-ink': COLOUR.sheet, ember: COLOUR.ember };

export const LINES: Readonly<Record<LineRole, Stroke>> = {
  axis: { stroke: COLOUR.ink, strokeWidth: 1.5 },
  tick: { stroke: COLOUR.edge, strokeWidth: 1 },
  grid: { stroke: COLOUR.line, strokeWidth: 1 },
  curve: { stroke: COLOUR.ink, strokeWidth: 2.4 },
  thread: { stroke: COLOUR.ink2, strokeWidth: 1 },
  limit: { stroke: COLOUR.ink, strokeWidth: 1.5, strokeDasharray: '7 4' },
  lesser: { stroke: COLOUR.ink2, strokeWidth: 1.2, strokeDasharray: '2 3' },
  ember: { stroke: COLOUR.ember, strokeWidth: 2 },
  path: { stroke: COLOUR.ink, strokeWidth: 2 },
  'path-gap': { stroke: COLOUR.sheet, strokeWidth: 5 },
  hatch: { stroke: COLOUR.edge, strokeWidth: 1 },
  'hatch-todo': { stroke: COLOUR.ember, strokeWidth: 1.3 },
};

/** Apart from grain, which is drawn out of its grains. */
export const FILLS: Readonly<Record<Exclude<FillRole, 'grain' | 'grain-edge'>, Fill>> = {
  ink: { fill: COLOUR.ink },
  'ink-2': { fill: COLOUR.ink2 },
  ember: { fill: COLOUR.ember },
  paper: { fill: COLOUR.sheet },
  well: { fill: COLOUR.well },
  ring: { fill: COLOUR.sheet, stroke: COLOUR.ink, strokeWidth: 2 },
  disc: { fill: COLOUR.ink, stroke: COLOUR.sheet, strokeWidth: 2 },
  outline: { fill: 'none', stroke: COLOUR.ink, strokeWidth: 1.5 },
  absent: { fill: 'none', stroke: COLOUR.edge, strokeWidth: 1 },
  todo: { fill: 'none', stroke: COLOUR.ember, strokeWidth: 1.5 },
};

export function isLineRole(role: LineRole | FillRole): role is LineRole {
  return role in LINES;
}
