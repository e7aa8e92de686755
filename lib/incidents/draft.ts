import { z } from 'zod';
import type { Typed } from '@/lib/forms/form-state';

/** Fields of the form that are its own affair. */
const NOT_TYPED = ['intent'];
/** More than a form with every field full. */
const LONGEST_DRAFT = 60_000;

const TypedSchema = z.record(z.string(), z.union([z.string(), z.array(z.string())]));

/** Returns what was typed as the text a draft is kept as. Throws when it is longer than any form. */
export function writeDraft(raw: Readonly<Record<string, unknown>>): string {
  const typed = Object.fromEntries(Object.entries(raw).flatMap(([name, value]) => (NOT_TYPED.includes(name) ? [] : textsOf(name, value))));
  const text = JSON.stringify(typed);
  if (text.length > LONGEST_DRAFT) throw new Error(`A draft of ${text.length} characters is no form of ours`);
  return text;
}

/** Returns the fields of a kept draft. Throws when it is not what this program keeps. */
export function readDraft(text: string): Typed {
  return TypedSchema.parse(JSON.parse(text));
}

/** Photos are no text, and are not kept. */
function textsOf(name: string, value: unknown): readonly (readonly [string, string | readonly string[]])[] {
  if (typeof value === 'string') return [[name, value]];
  if (!Array.isArray(value)) return [];
  const texts = value.filter((one) => typeof one === 'string');
  return texts.length === 0 ? [] : [[name, texts]];
}
