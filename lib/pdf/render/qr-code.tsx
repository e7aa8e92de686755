import { Path, Svg } from '@react-pdf/renderer';
import { create } from 'qrcode';
import { COLOUR } from './paper-colours';

/** Four modules of white around it, as readers need (ISO/IEC 18004). */
const QUIET = 4;

/** A QR code as one outline, black on white; a seventh of it may be dirty and it is still read. @param size points, its quiet edge included */
export function QrCode({ text, size }: { readonly text: string; readonly size: number }) {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  const side = modules.size + 2 * QUIET;
  return (
    <Svg width={size} height={size} viewBox={`0 0 ${side} ${side}`}>
      <Path d={`M0 0h${side}v${side}h-${side}z`} fill={COLOUR.sheet} />
      <Path d={outline(modules)} fill="#000000" />
    </Svg>
  );
}

/** Each unbroken run of dark modules in a line as one rectangle. */
function outline({ size, data }: { readonly size: number; readonly data: Uint8Array }): string {
  const runs: string[] = [];
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) {
      const from = x;
      while (x < size && data[y * size + x] === 1) x += 1;
      if (x > from) runs.push(`M${from + QUIET} ${y + QUIET}h${x - from}v1h-${x - from}z`);
    }
  }
  return runs.join('');
}
