import 'server-only';
import { create } from 'qrcode';

/** A QR code as one path of squares, in a box of `size` by `size` with a quiet edge of four squares (ISO/IEC 18004). */
export interface QrPath { readonly size: number; readonly path: string }

const QUIET = 4;

/** Returns the code of a text, with a quarter of it allowed to be dirty or scratched (level Q). */
export function qrPath(text: string): QrPath {
  const { modules } = create(text, { errorCorrectionLevel: 'Q' });
  const squares: string[] = [];
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column) !== 0) squares.push(`M${column + QUIET} ${row + QUIET}h1v1h-1z`);
    }
  }
  return { size: modules.size + 2 * QUIET, path: squares.join('') };
}
