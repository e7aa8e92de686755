/**
 * Why a file is not read any further.
 * - `empty`, `not-pdf`: there is nothing, or something else
 * - `too-large`: larger or more entangled than any file that is made here
 * - `truncated`: begins as a PDF and has no end
 * - `encrypted`: would need a password
 * - `other-structure`: may be a good PDF, but is built in a way that files made here never are
 * - `damaged`: breaks a rule of the format
 */
export type PdfFaultKind = 'empty' | 'not-pdf' | 'too-large' | 'truncated' | 'encrypted' | 'other-structure' | 'damaged';

/**
 * Ends the reading of a file from deep inside of it. Caught where reading begins and returned as a value: a bad
 * file is something people hand in, not a fault of the program.
 */
export class PdfFault extends Error {
  constructor(readonly fault: PdfFaultKind, message: string) {
    super(message);
    this.name = 'PdfFault';
  }
}

/** Throws unless the file keeps a rule of the format. */
export function expectOfFile(kept: boolean, rule: string): asserts kept {
  if (!kept) throw new PdfFault('damaged', rule);
}
