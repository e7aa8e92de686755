import { linkHorizontal } from 'd3-shape';
import { whole, rounded } from '@/lib/wording/numbers';
import type { BowTie, BowTieBranch } from './bow-tie-model';
import { BAR_WIDTH, barLength, halfHeight, threadMarks, threadWidth } from './bow-tie-bars';
import { gradeShape, path, rect, text, textLines } from './marks';
import { LINE_HEIGHT, type Mark, NARROW, type Scene, WIDE } from './scene';
import { wrap } from './text-width';

/** Width of the threads where everything passes: before the event, and at the start of each of its ends. */
const BEFORE = 9;
const BEHIND = 6;
const HEAD = 30;
const START = { x: 0, width: 86 };
const KNOT = { x: 242, width: 100 };
const END = { x: 560, width: WIDE - 560 };
const ROW = 80;
const FOOT = 34;

/** A risk as a bow tie: what stops it, the event, what limits each of its ends. Wide only. */
export function bowTieScene(tie: BowTie): Scene {
  const rows = rowHeights(tie);
  const body = Math.max(180, rows.reduce((sum, height) => sum + height, 0));
  const middle = HEAD + body / 2;
  const left = threadMarks(tie.prevent, { from: START.width + 8, to: KNOT.x, y: middle, full: BEFORE });
  const ends = tie.branches.map((branch, index) => branchMarks(branch, HEAD + sum(rows.slice(0, index)) + (rows[index] ?? ROW) / 2 + (body - sum(rows)) / 2, middle, spread(index, tie.branches.length)));
  return {
    width: WIDE,
    height: HEAD + body + FOOT,
    title: bowTieFinding(tie),
    marks: [...heads(), ...left.under, ...ends.flatMap((end) => end.under), ...startMarks(tie, middle), ...left.over, ...ends.flatMap((end) => end.over), ...knot(tie.risk.title, middle), ...measure(HEAD + body + FOOT)],
  };
}

/** One thread alone, as wide as a phone: its bars in a row. */
export function threadScene(branch: Pick<BowTieBranch, 'bars'>, title: string): Scene {
  const half = halfHeight(branch.bars);
  const to = Math.min(NARROW, 30 + branch.bars.length * 26);
  const { under, over } = threadMarks(branch.bars, { from: 0, to, y: half + 2, full: BEHIND });
  return { width: NARROW, height: 2 * half + 22, title, marks: [...under, ...over] };
}

/** What the picture says, in a sentence. */
function bowTieFinding({ prevent, branches, risk }: BowTie): string {
  const absent = prevent.filter((bar) => bar.state === 'absent').length;
  return `Bow tie of: ${risk.title}. ${prevent.length} controls can stop it, ${absent} of them absent; it can end in ${branches.length} ways, each with controls that limit it. The list below names them.`;
}

function heads(): readonly Mark[] {
  return [
    text(START.x, 14, 'What starts it', 'ink', { strong: true }),
    text(START.width + 20, 14, 'what stops it', 'ink-2'),
    text(KNOT.x + KNOT.width + 34, 14, 'what limits it', 'ink-2'),
    text(END.x, 14, 'What it does', 'ink', { strong: true }),
  ];
}

function startMarks({ risk }: BowTie, middle: number): readonly Mark[] {
  const exposure = risk.exposure >= 100 ? whole(risk.exposure) : rounded(risk.exposure);
  const lines = wrap(`${exposure} ${risk.exposureTitle} a season`, START.width, 7);
  return textLines(START.x, middle - (lines.length * LINE_HEIGHT) / 2 + 12, lines);
}

function knot(title: string, middle: number): readonly Mark[] {
  const lines = wrap(title, KNOT.width - 14, 6, true);
  const height = lines.length * LINE_HEIGHT + 26;
  const x = KNOT.x + KNOT.width / 2;
  return [rect('ink', KNOT.x, middle - height / 2, KNOT.width, height), ...textLines(x, middle - ((lines.length - 1) * LINE_HEIGHT) / 2 + 4.5, lines, 'on-ink', { anchor: 'middle', strong: true })];
}

function branchMarks(branch: BowTieBranch, y: number, middle: number, offset: number): { readonly under: readonly Mark[]; readonly over: readonly Mark[] } {
  const from = KNOT.x + KNOT.width;
  const link = linkHorizontal<unknown, readonly [number, number]>().source(() => [from, middle + offset]).target(() => [from + 38, y])(null) ?? '';
  const thread = threadMarks(branch.bars, { from: from + 38, to: END.x - 8, y, full: BEHIND });
  const lines = wrap(branch.branch.title, END.width - 20, 4);
  const first = y - ((lines.length - 1) * LINE_HEIGHT) / 2 + 4.5;
  const grade = branch.branch.grade === 'not applicable' ? 'none' : branch.branch.grade;
  return {
    under: [path('thread', link, threadWidth(1, BEHIND)), ...thread.under],
    over: [...thread.over, gradeShape(grade, END.x, first - 11, 13, 'sheet'), ...textLines(END.x + 18, first, lines)],
  };
}

/** Where a branch leaves the knot, so that their threads do not lie on one another. */
function spread(index: number, count: number): number {
  return (index - (count - 1) / 2) * 11;
}

function rowHeights(tie: BowTie): readonly number[] {
  return tie.branches.map(({ branch, bars }) => Math.max(ROW, 2 * halfHeight(bars) + 44, wrap(branch.title, END.width - 20, 4).length * LINE_HEIGHT + 14));
}

/** How long a bar is that lets one in ten through, to measure the others by. */
function measure(height: number): readonly Mark[] {
  const y = height - 12;
  return [rect('outline', 0.75, y - BAR_WIDTH / 2, barLength(1), BAR_WIDTH), text(barLength(1) + 10, y + 4.5, 'a bar this long lets 1 in 10 past', 'ink-2')];
}

function sum(values: readonly number[]): number { return values.reduce((total, value) => total + value, 0); }
