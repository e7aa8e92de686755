import type { Block, Cell, Column, Paper } from '@/lib/papers/paper';
import { textWidth } from '../../render/paper-size';
import { TYPE } from '../../render/paper-type';
import { INITIALS_ROW, STEP_PICTURE } from './sizes';

/** Width of a letter on the average, of its size: wide enough that a text is never taken for shorter than it is set. */
const LETTER = 0.56;
const LINE = 1.4;
/** Between the columns of a table. */
export const COLUMN_GAP = 7;

/** Height of a text that runs over as many lines as it takes, points. */
function textHeight(words: string, size: number, width: number): number {
  return Math.max(1, Math.ceil((words.length * LETTER * size) / width)) * size * LINE;
}

/**
 * How much of a block has to stand on the page where it begins, points: a heading is not left alone at the foot of a
 * page, nor the head of a table without a row.
 */
export function presenceOf(block: Block, format: Paper['format']): number {
  const width = textWidth(format);
  switch (block.kind) {
    case 'heading': return 40;
    case 'text': return Math.min(textHeight(block.text, TYPE.body, width), 3 * TYPE.body * LINE) + 6;
    case 'facts': { const [row] = block.rows; return row === undefined ? 0 : beginning(rowHeight([row.value, row.under ?? ''], width - 160)) + 12; }
    case 'list': { const [item] = block.items; return item === undefined ? 0 : beginning(textHeight(`${item.lead} ${item.text ?? ''}`, TYPE.body, width - 20)) + 8; }
    case 'table': return 34 + tablePresence(block.columns, block.rows[0], block.empty, width);
    case 'figure': return figureHeight(block, width);
    case 'steps': return STEP_PICTURE[block.size] + 10;
    case 'initials': return 20 + INITIALS_ROW;
    case 'notice': return TYPE.heading * LINE + textHeight(block.text, TYPE.body, width - 20) + 34;
  }
}

/** What of a table follows its caption at least: its head and its first row, or the beginning of a tall one. */
export function tablePresence(columns: readonly Column[], row: readonly Cell[] | undefined, empty: string, width: number): number {
  if (row === undefined) return textHeight(empty, TYPE.table, width);
  return 28 + beginning(cellsHeight(columns, row, width));
}

/** Height of the tallest of its cells, points, on the long side. */
function cellsHeight(columns: readonly Column[], row: readonly Cell[], width: number): number {
  const share = (width - COLUMN_GAP * (columns.length - 1)) / columns.reduce((sum, column) => sum + column.width, 0);
  return Math.max(...columns.map((column, index) => rowHeight(wordsOf(row[index] ?? ''), share * column.width)));
}

/**
 * What is not torn over two pages: anything up to half a page. The writer cuts off what is kept whole and is taller than a
 * page, so that its end would stand nowhere.
 */
const TALLEST_WHOLE = 300;
export const rowStaysWhole = (columns: readonly Column[], row: readonly Cell[], format: Paper['format']): boolean => cellsHeight(columns, row, textWidth(format)) <= TALLEST_WHOLE;
export const wordsStayWhole = (words: string, width: number): boolean => textHeight(words, TYPE.body, width) <= TALLEST_WHOLE;
const beginning = (height: number): number => (height <= TALLEST_WHOLE ? height : 5 * TYPE.body * LINE);

const wordsOf = (cell: Cell): readonly string[] => (typeof cell === 'string' ? [cell] : 'grade' in cell ? [`xxx ${cell.word}`, cell.note ?? ''] : [cell.text, cell.under]);

const rowHeight = ([main = '', under = '']: readonly string[], width: number): number => textHeight(main, TYPE.body, width) + (under === '' ? 0 : textHeight(under, TYPE.small, width));

function figureHeight({ scene, caption }: Extract<Block, { readonly kind: 'figure' }>, width: number): number {
  return (scene.height * width) / scene.width + textHeight(`${scene.title} ${caption}`, TYPE.small, width) + 24;
}
