/** Data as JSON can hold it. */
export type JsonValue = null | boolean | number | string | readonly JsonValue[] | { readonly [key: string]: JsonValue | undefined };

/**
 * One spelling for one value, after RFC 8785 (JSON Canonicalization Scheme, from memory): no white space,
 * keys sorted by UTF-16 code units, numbers as ECMAScript prints them. Keys without a value are left out.
 * @throws when a number is not finite: JSON has no word for it, so it can have no fingerprint
 */
export function canonicalJson(value: JsonValue): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`JSON cannot hold ${value}`);
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (isList(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const members = Object.keys(value).sort().flatMap((key) => {
    const member = value[key];
    return member === undefined ? [] : [`${JSON.stringify(key)}:${canonicalJson(member)}`];
  });
  return `{${members.join(',')}}`;
}

/** Array.isArray, for lists that are read only. */
function isList(value: object): value is readonly JsonValue[] {
  return Array.isArray(value);
}
