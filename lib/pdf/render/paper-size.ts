/** The two formats that schools print on; the names are the PDF writer's. */
export type PaperSize = 'A4' | 'LETTER';

/** Points: 72 to the inch. */
export interface PaperMeasures { readonly width: number; readonly height: number }

export const PAPER: Readonly<Record<PaperSize, PaperMeasures>> = {
  A4: { width: 595.28, height: 841.89 },
  LETTER: { width: 612, height: 792 },
};

/** 24 mm on the left, where a binder takes its holes. */
export const MARGIN = { left: 68, right: 44, top: 66, bottom: 74 } as const;

/** Width of the text, points. */
export function textWidth(paper: PaperSize): number {
  return PAPER[paper].width - MARGIN.left - MARGIN.right;
}
