/** @returns line and column of a place in a text, both counted from 1, in words */
export function positionInWords(text: string, at: number): string {
  const before = text.slice(0, at).split(/\r\n|\n|\r/);
  const column = (before.at(-1) ?? '').length + 1;
  return `line ${before.length}, column ${column}`;
}
