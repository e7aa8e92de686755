import { DAY_MS } from '@/lib/units/time';

/** Names and values in the order of the form. */
export type Fields = readonly (readonly [string, string])[];
interface Kept { readonly at: number; readonly fields: Fields }

/** Long enough for an interrupted day, short enough for a device that others use too. */
const KEPT_MS = DAY_MS;

const keyOf = (personId: string): string => `sandbucket.incident.${personId}`;

/** What one person typed on this device within a day, or null. */
export function keptTyping(personId: string): Kept | null {
  const text = localStorage.getItem(keyOf(personId));
  const kept: unknown = text === null ? null : JSON.parse(text);
  if (!isKept(kept) || Date.now() - kept.at > KEPT_MS) {
    forgetTyping(personId);
    return null;
  }
  return kept;
}

export function keepTyping(personId: string, fields: Fields): void {
  localStorage.setItem(keyOf(personId), JSON.stringify({ at: Date.now(), fields } satisfies Kept));
}

export function forgetTyping(personId: string): void {
  localStorage.removeItem(keyOf(personId));
}

/** The texts of a form. Files cannot be kept; what the framework puts into a form is not ours. */
export function readFields(form: HTMLFormElement): Fields {
  return [...new FormData(form)].flatMap(([name, value]) => (typeof value === 'string' && !name.startsWith('$') ? [[name, value] as const] : []));
}

/** Puts texts back: a box is ticked when its value is among those of its name. */
export function writeFields(form: HTMLFormElement, fields: Fields): void {
  for (const element of form.elements) {
    const values = fields.filter(([name]) => name === element.getAttribute('name')).map(([, value]) => value);
    if (element instanceof HTMLInputElement && (element.type === 'checkbox' || element.type === 'radio')) element.checked = values.includes(element.value);
    else if (values[0] !== undefined && isWritable(element)) element.value = values[0];
  }
}

function isWritable(element: Element): element is HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement {
  return (element instanceof HTMLInputElement && element.type !== 'file') || element instanceof HTMLTextAreaElement || element instanceof HTMLSelectElement;
}

function isKept(value: unknown): value is Kept {
  return typeof value === 'object' && value !== null && 'at' in value && typeof value.at === 'number' && 'fields' in value && Array.isArray(value.fields);
}
