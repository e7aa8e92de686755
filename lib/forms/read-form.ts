import type { Typed } from './form-state';

export interface ReadForm {
  /** for the schema: a value per name, a list where a name stood more than once; files as they came */
  readonly input: Readonly<Record<string, FormDataEntryValue | readonly FormDataEntryValue[]>>;
  /** to show again: texts only, and never a password */
  readonly typed: Typed;
}

/** Names React and Next put into a form for themselves. */
const OF_THE_FRAMEWORK = /^\$ACTION_/;
/** Never sent back to the browser. */
const SECRET = /password|setupCode/i;

/** Returns what a form holds. A file input nobody used sends an empty file; it counts as absent. */
export function readForm(form: FormData): ReadForm {
  const input: Record<string, FormDataEntryValue | readonly FormDataEntryValue[]> = {};
  const typed: Record<string, string | readonly string[]> = {};
  for (const name of new Set(form.keys())) {
    if (OF_THE_FRAMEWORK.test(name)) continue;
    const values = form.getAll(name).filter((value) => typeof value === 'string' || !isUnused(value));
    const texts = values.filter((value) => typeof value === 'string');
    if (values.length > 0) input[name] = oneOrAll(values);
    if (texts.length > 0 && !SECRET.test(name)) typed[name] = oneOrAll(texts);
  }
  return { input, typed };
}

/** A file input nobody used: without a name in a plain POST, and named "undefined" when React sends the form. */
function isUnused({ size, name }: File): boolean {
  return size === 0 && (name === '' || name === 'undefined');
}

function oneOrAll<Value>(values: readonly Value[]): Value | readonly Value[] {
  const [first] = values;
  return values.length === 1 && first !== undefined ? first : values;
}
