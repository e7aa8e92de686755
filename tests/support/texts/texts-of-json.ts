/**
 * The passages of a JSON document, each a list of texts. What belongs together is one passage: an object with
 * an `id` and all that is in it, so that "The pack smokes." in one line and "Fetch it." in the next meet.
 * Single words are values and no text.
 */
export function passagesOfJson(value: unknown): readonly (readonly string[])[] {
  if (typeof value === 'string') return passage([value]);
  if (value === null || typeof value !== 'object') return [];
  if ('id' in value) return passage(stringsIn(value));
  return Object.values(value).flatMap(passagesOfJson);
}

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return value === null || typeof value !== 'object' ? [] : Object.values(value).flatMap(stringsIn);
}

function passage(strings: readonly string[]): readonly (readonly string[])[] {
  const texts = strings.filter((text) => /\S\s+\S/.test(text));
  return texts.length === 0 ? [] : [texts];
}
