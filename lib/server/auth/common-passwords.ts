import 'server-only';
import { dictionary } from '@zxcvbn-ts/language-common';

let words: ReadonlySet<string> | undefined;

/** Says whether a lower-cased word is one of the 49,000 passwords most often found in leaks. Read at the first call. */
export function isCommonPassword(word: string): boolean {
  words ??= new Set(dictionary['passwords-common']);
  return words.has(word);
}
