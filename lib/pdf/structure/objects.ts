/**
 * The objects a PDF is made of (ISO 32000-2, 7.3), as read from a file or to be written into one. Numbers,
 * truth values and null stand for themselves.
 */
export type PdfValue = null | boolean | number | PdfName | PdfString | PdfArray | PdfDict | PdfStream | PdfRef;

export interface PdfName { readonly kind: 'name'; readonly name: string }
export interface PdfString { readonly kind: 'string'; readonly bytes: Uint8Array; readonly form: 'literal' | 'hex' }
export interface PdfArray { readonly kind: 'array'; readonly items: readonly PdfValue[] }
export interface PdfDict {
  readonly kind: 'dict';
  readonly entries: ReadonlyMap<string, PdfValue>;
  /** where each value stands in the file; absent for a dictionary that was made, not read */
  readonly spans?: ReadonlyMap<string, Span>;
}
export interface PdfStream { readonly kind: 'stream'; readonly dict: PdfDict; readonly data: Uint8Array }
export interface PdfRef { readonly kind: 'ref'; readonly number: number; readonly generation: number }

/** Bytes of a file from `start` up to, and without, `end`. */
export interface Span { readonly start: number; readonly end: number }

/** An object that can be referred to, and where it stands. */
export interface IndirectObject extends Span { readonly ref: PdfRef; readonly value: PdfValue }

type Kind = Exclude<PdfValue, null | boolean | number>['kind'];

/** Whether a value is of a kind; also false where there is no value. */
export function isA<K extends Kind>(value: PdfValue | undefined, kind: K): value is Extract<PdfValue, { kind: K }> {
  return typeof value === 'object' && value !== null && value.kind === kind;
}

/** Whether a value is the name given, as /Sig. */
export function isNamed(value: PdfValue | undefined, name: string): boolean {
  return isA(value, 'name') && value.name === name;
}

export const nameOf = (name: string): PdfName => ({ kind: 'name', name });
export const refTo = (number: number, generation = 0): PdfRef => ({ kind: 'ref', number, generation });
export const arrayOf = (items: readonly PdfValue[]): PdfArray => ({ kind: 'array', items });
export const dictOf = (entries: Readonly<Record<string, PdfValue>>): PdfDict => ({ kind: 'dict', entries: new Map(Object.entries(entries)) });

/** The same dictionary with some entries set; where none of them stood they come last. */
export function withEntries(dict: PdfDict, entries: Readonly<Record<string, PdfValue>>): PdfDict {
  return { kind: 'dict', entries: new Map([...dict.entries, ...Object.entries(entries)]) };
}
