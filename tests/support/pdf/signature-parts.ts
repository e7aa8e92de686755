/** A signature of a PDF as bytes for another program: what it covers, and the CMS container. Found here by searching, not by the project's own reader. */
export function signatureParts(pdf: Uint8Array): readonly { readonly covered: Uint8Array; readonly container: Uint8Array; readonly gap: { readonly start: number; readonly end: number } }[] {
  const text = Buffer.from(pdf).toString('latin1');
  return Array.from(text.matchAll(/\/ByteRange \[0 (\d+) (\d+) (\d+)\]/g), ([, a, b, c]) => {
    const [start, end, rest] = [Number(a), Number(b), Number(c)];
    const covered = Buffer.concat([pdf.subarray(0, start), pdf.subarray(end, end + rest)]);
    return { covered: new Uint8Array(covered), container: new Uint8Array(Buffer.from(text.slice(start + 1, end - 1), 'hex')), gap: { start, end } };
  });
}
