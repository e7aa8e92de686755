/**
 * Relative luminance of a colour: weighted sum of its linear channels. A channel is linear below 0.04045,
 * above it ((c + 0.055) / 1.055)^2.4. Source: WCAG 2.2, relative luminance, with the corrected threshold
 * (REFERENCES, CK-31).
 * @param hex "#rrggbb"
 * @returns 0 for black to 1 for white
 */
export function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((start) => linear(parseInt(hex.slice(start, start + 2), 16) / 255));
  if (red === undefined || green === undefined || blue === undefined || !/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`not a colour of six digits: ${hex}`);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast of two colours, 1 to 21: (lighter + 0.05) / (darker + 0.05). Source: WCAG 2.2, contrast ratio. */
export function contrastRatio(one: string, other: string): number {
  const [darker, lighter] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
