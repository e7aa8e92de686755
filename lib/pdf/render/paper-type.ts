/** The least size of anything to be read on paper, points. */
const LEAST_SIZE = 9;

/** A size of letters on paper, points. @throws below the least one: nothing on a signed paper is small print */
export function letters(size: number): number {
  if (!(size >= LEAST_SIZE)) throw new Error(`letters of ${size} points are too small for paper`);
  return size;
}

/** The sizes that papers use, points. */
export const TYPE = {
  title: letters(27),
  call: letters(20),
  heading: letters(17),
  subheading: letters(12),
  body: letters(10.5),
  table: letters(9.5),
  small: letters(9),
} as const;
