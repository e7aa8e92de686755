import type { Scene } from '@/lib/charts/scene';
import type { Grade } from '@/lib/core/result';

/**
 * A paper as data: what stands on it, in order, and nothing of how it is drawn. One renderer makes the PDF
 * of it and one the page on screen, so that both say the same.
 */
export interface Paper {
  readonly kind: 'assessment' | 'incident' | 'event' | 'response card' | 'pack list' | 'briefing';
  /** number of the document, printed on every page */
  readonly number: string;
  readonly title: string;
  readonly subtitle: string;
  readonly format: 'A4' | 'LETTER';
  /** language of the text, for readers that speak it */
  readonly language: string;
  readonly author: string;
  /** ISO date and time that stands for the making of it; nothing else in a file depends on a clock */
  readonly madeAt: string;
  /** short fingerprint of what the paper was made from, printed on every page */
  readonly fingerprint: string;
  /** where anybody can check the file; drawn as a square code too */
  readonly verifyAt: string;
  /** where the same words stand as a page, for those who cannot see a printed one; said on the first page */
  readonly twinAt?: string;
  /** the caution on every page, where it is more than the usual one */
  readonly caution?: string;
  /** telephone numbers that stand in it, as they are written: set in zeros that cannot be taken for another sign */
  readonly dialled?: readonly string[];
  readonly cover: readonly Block[];
  readonly sections: readonly PaperSection[];
  readonly signatures: readonly SignaturePlace[];
}

export interface PaperSection {
  readonly id: string;
  readonly title: string;
  /** begins on a page of its own */
  readonly ownPage?: boolean;
  readonly blocks: readonly Block[];
}

/** A place for a signature on the cover; its name is that of the form field. */
export interface SignaturePlace { readonly field: 'Preparer' | 'Officer'; readonly title: string; readonly name: string; readonly post: string }

/** `presses` needs a person now; `quiet` is small print. */
export type Tone = 'plain' | 'strong' | 'quiet' | 'presses';

export interface GradeCell { readonly grade: Grade | 'none'; readonly word: string; readonly note?: string }
/** What stands in a table: text, text with a second line, or a grade with its shape. */
export type Cell = string | { readonly text: string; readonly under: string } | GradeCell;

export interface Column { readonly head: string; /** share of the width, any positive number */ readonly width: number; readonly align?: 'right' }

/** What is done next, with a drawing of it; the words say all, the drawing nothing more. */
export interface PicturedStep { readonly picture: Scene; readonly lead: string; readonly text?: string }

/** Of the letters of pictured steps: as large as the page allows. */
export type StepSize = 'huge' | 'large' | 'plain' | 'small';

export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly tone?: Tone }
  | { readonly kind: 'facts'; /** side by side, where room is short */ readonly columns?: 2; readonly rows: readonly { readonly name: string; readonly value: string; readonly under?: string }[] }
  | { readonly kind: 'list'; readonly ordered?: boolean; /** in the least size, where room is short */ readonly small?: boolean; /** side by side, of short items with a lead only, which is then not set in bold */ readonly columns?: 2; readonly items: readonly { readonly lead: string; readonly text?: string }[] }
  | { readonly kind: 'table'; readonly caption: string; readonly columns: readonly Column[]; readonly rows: readonly (readonly Cell[])[]; /** said when there is no row */ readonly empty: string }
  | { readonly kind: 'figure'; readonly scene: Scene; readonly caption: string }
  | { readonly kind: 'steps'; readonly size: StepSize; readonly items: readonly PicturedStep[] }
  | { readonly kind: 'initials'; readonly caption: string; /** empty places, to be filled in by hand */ readonly places: number }
  | { readonly kind: 'notice'; readonly title: string; readonly text: string; readonly presses?: boolean };

export const text = (words: string, tone?: Tone): Block => (tone === undefined ? { kind: 'text', text: words } : { kind: 'text', text: words, tone });
export const heading = (words: string): Block => ({ kind: 'heading', text: words });

/** All words of a paper in reading order: what a test compares a printed file with. */
export function wordsOf(paper: Paper): readonly string[] {
  const blocks = [...paper.cover, ...paper.sections.flatMap((section) => section.blocks)];
  return [paper.title, paper.subtitle, ...paper.sections.map((section) => section.title), ...blocks.flatMap(wordsOfBlock), ...paper.signatures.flatMap((place) => [place.name, place.post])];
}

function wordsOfBlock(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
    case 'text': return [block.text];
    case 'facts': return block.rows.flatMap(({ name, value, under }) => [name, value, ...(under === undefined ? [] : [under])]);
    case 'steps':
    case 'list': return block.items.flatMap(({ lead, text: rest }) => [lead, ...(rest === undefined ? [] : [rest])]);
    case 'table': return [block.caption, ...block.columns.map((column) => column.head), ...(block.rows.length === 0 ? [block.empty] : block.rows.flat().flatMap(wordsOfCell))];
    case 'figure': return [block.caption];
    case 'initials': return [block.caption];
    case 'notice': return [block.title, block.text];
  }
}

function wordsOfCell(cell: Cell): readonly string[] {
  if (typeof cell === 'string') return [cell];
  if ('grade' in cell) return cell.note === undefined ? [cell.word] : [cell.word, cell.note];
  return [cell.text, cell.under];
}
