/** The sentences of a text. A colon, a semicolon and a number with a point end none; "R. O." and "10 ft." do not either. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .replace(/\s+/g, ' ')
    .split(/(?<=[.!?]["”’)]?)(?<!\b[A-Z]\.)(?<!\b(?:e\.g|i\.e|no|ft|vs)\.)\s+(?=["“‘(]?[A-Z0-9{…])/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '');
}
