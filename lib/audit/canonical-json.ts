/**
 * Returns the one text a JSON value has by the JSON Canonicalization Scheme (RFC 8785): no spaces, names of an object
 * in the order of their UTF-16 code units, numbers and strings as ECMAScript writes them.
 * Throws for what JSON does not know: undefined, functions, big integers, dates, numbers that are not finite, and half
 * surrogate pairs.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return canonicalString(value);
  if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (isPlainObject(value)) {
    // Without a function of its own, sort compares UTF-16 code units, as the scheme wants it.
    const members = Object.keys(value).sort().map((name) => `${canonicalString(name)}:${canonicalJson(value[name])}`);
    return `{${members.join(',')}}`;
  }
  throw new TypeError(`Not a JSON value: ${String(value)}`);
}

const HALF_OF_A_PAIR = /\p{Surrogate}/u;

function canonicalString(text: string): string {
  if (HALF_OF_A_PAIR.test(text)) throw new TypeError('Not a JSON value: text with half a surrogate pair');
  return JSON.stringify(text);
}

function isPlainObject(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}
