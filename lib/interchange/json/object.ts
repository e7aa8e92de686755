/** @returns the entries of an object of a document, or none when the value is something else */
export function entriesOf(value: unknown): readonly (readonly [string, unknown])[] {
  return isObject(value) ? Object.entries(value) : [];
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** @returns the value at a name of an object of a document; undefined when there is none */
export function memberOf(value: unknown, name: string): unknown {
  return isObject(value) && Object.hasOwn(value, name) ? value[name] : undefined;
}

/** @returns the items of a list of a document, or none when the value is something else */
export function itemsOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
