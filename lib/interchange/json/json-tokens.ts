/** A place in a document beyond which nothing can be read. */
export class JsonSyntaxError extends Error {
  constructor(problem: string, readonly expected: string, readonly at: number) {
    super(problem);
  }
}

const WORD = /-?[A-Za-z_$]+/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** @returns the letters that stand at a place, with a minus in front of them, or nothing */
export function wordAt(text: string, at: number): string {
  WORD.lastIndex = at;
  return WORD.exec(text)?.[0] ?? '';
}

/**
 * @param start place of the opening quote
 * @returns place after the closing quote
 * @throws JsonSyntaxError when the text does not end, breaks the line or holds an escape JSON does not have
 */
export function stringEnd(text: string, start: number): number {
  let at = start + 1;
  for (;;) {
    const character = text[at];
    if (character === undefined) throw new JsonSyntaxError('text in quotes does not end', 'a closing double quote', start);
    if (character < ' ') throw new JsonSyntaxError('a line break or another control character stands in text', 'a closing double quote, or \\n', at);
    if (character === '"') return at + 1;
    at += character === '\\' ? escapeLength(text, at) : 1;
  }
}

function escapeLength(text: string, at: number): number {
  ESCAPE.lastIndex = at;
  const escape = ESCAPE.exec(text)?.[0];
  if (escape === undefined) throw new JsonSyntaxError('a backslash with a sign after it that JSON does not know', '\\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four digits', at);
  return escape.length;
}
