import { type DocumentFault, faultAt } from './fault';
import { JsonReader, JsonSyntaxError } from './json-reader';
import { positionInWords } from './position';

/** A document longer than this is none of ours: the fullest one has about 200,000 characters. */
const MOST_CHARACTERS = 500_000;

/** `value` is what could be read; it may be looked at for further faults even when there are some already. */
export type JsonRead =
  | { readonly readable: true; readonly value: unknown; readonly faults: readonly DocumentFault[] }
  | { readonly readable: false; readonly fault: DocumentFault };

/**
 * Reads JSON (RFC 8259) and says in words what is wrong with it. Stricter than JSON.parse: the same name twice
 * in one object, a number beyond what can be held, and names that reach into the language are faults.
 * @param text a whole document; a byte order mark in front is left out
 */
export function readJson(text: string): JsonRead {
  if (text.length > MOST_CHARACTERS) {
    return unreadable(`has ${text.length.toLocaleString('en-GB')} characters`, `at most ${MOST_CHARACTERS.toLocaleString('en-GB')}`);
  }
  const document = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (document.trim() === '') return unreadable('is empty', 'a JSON document, { … }');
  const reader = new JsonReader(document);
  try {
    return { readable: true, value: reader.whole(), faults: reader.faults };
  } catch (error) {
    if (!(error instanceof JsonSyntaxError)) throw error;
    return unreadable(`${positionInWords(document, error.at)}: ${error.message}`, error.expected);
  }
}

function unreadable(problem: string, expected: string): JsonRead {
  return { readable: false, fault: faultAt([], problem, expected) };
}
