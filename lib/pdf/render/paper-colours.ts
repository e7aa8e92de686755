import type { Grade } from '@/lib/core/result';

/** The light theme of the screen on white. Every grade has word and shape besides, so black and white is enough. */
export const COLOUR = {
  sheet: '#ffffff',
  well: '#f1ebdd',
  ink: '#13202b',
  ink2: '#46515b',
  edge: '#736750',
  line: '#d3c7ae',
  grain: '#93713a',
  ember: '#b02e08',
} as const;

interface GradeColours {
  /** the shape on the sheet */
  readonly mark: string;
  /** a cell of the matrix, and what stands in it */
  readonly cell: string;
  readonly onCell: string;
}

export const GRADE_COLOURS: Readonly<Record<Grade | 'none', GradeColours>> = {
  low: { mark: '#46807a', cell: '#f4f1e6', onCell: '#13202b' },
  moderate: { mark: '#83600a', cell: '#ecd9a4', onCell: '#13202b' },
  high: { mark: '#ad3a07', cell: '#e3a076', onCell: '#13202b' },
  extreme: { mark: '#7a0f2c', cell: '#7a0f2c', onCell: '#fff4ee' },
  none: { mark: '#46515b', cell: '#e4ddcd', onCell: '#46515b' },
};
