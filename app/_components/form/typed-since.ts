/** What stands in the fields of one name: texts, or the values that are ticked, in the order of the form; and files. */
interface Held { readonly values: readonly string[]; readonly files: readonly File[] }
export type HeldFields = ReadonlyMap<string, Held>;

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** Fields a person fills in. A hidden one belongs to the page, and must follow it. */
function fieldsOf(form: HTMLFormElement): readonly Field[] {
  return [...form.elements].filter((element): element is Field =>
    (element instanceof HTMLInputElement && !['hidden', 'submit', 'button'].includes(element.type)) || element instanceof HTMLTextAreaElement || element instanceof HTMLSelectElement,
  ).filter(({ name }) => name !== '');
}

function valuesOf(field: Field): readonly string[] {
  if (isTick(field)) return field.checked ? [field.value] : [];
  return isFile(field) ? [] : [field.value];
}

/** Returns what stands in the fields of a form now. */
export function heldFields(form: HTMLFormElement): HeldFields {
  const held = new Map<string, Held>();
  for (const field of fieldsOf(form)) {
    const before = held.get(field.name) ?? { values: [], files: [] };
    held.set(field.name, { values: [...before.values, ...valuesOf(field)], files: [...before.files, ...(isFile(field) ? (field.files ?? []) : [])] });
  }
  return held;
}

/** Returns the fields that are not as they were when the form was sent. */
export function changedSince(sent: HeldFields, now: HeldFields): HeldFields {
  return new Map([...now].filter(([name, held]) => {
    const before = sent.get(name);
    return before !== undefined && !(sameList(before.values, held.values) && sameList(before.files, held.files));
  }));
}

/** Returns the fields with chosen files, which no answer of a server brings back. */
export function withFiles(fields: HeldFields): HeldFields {
  return new Map([...fields].filter(([, { files }]) => files.length > 0));
}

/** Puts values back into the fields of their names, and lets those who listen to the form know. */
export function putBack(form: HTMLFormElement, fields: HeldFields): void {
  const used = new Map<string, number>();
  for (const field of fieldsOf(form)) {
    const held = fields.get(field.name);
    if (held === undefined) continue;
    const nth = used.get(field.name) ?? 0;
    used.set(field.name, nth + 1);
    if (isTick(field)) field.checked = held.values.includes(field.value);
    else if (isFile(field)) field.files = listOfFiles(held.files);
    else field.value = held.values[nth] ?? '';
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }
}

/** A file field takes only a browser's own list. */
function listOfFiles(files: readonly File[]): FileList {
  const transfer = new DataTransfer();
  for (const file of files) transfer.items.add(file);
  return transfer.files;
}

function isTick(field: Field): field is HTMLInputElement {
  return field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio');
}

function isFile(field: Field): field is HTMLInputElement {
  return field instanceof HTMLInputElement && field.type === 'file';
}

function sameList<Item>(one: readonly Item[], other: readonly Item[]): boolean {
  return one.length === other.length && one.every((item, at) => item === other[at]);
}
