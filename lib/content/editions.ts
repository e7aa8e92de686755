import { edition1 } from './edition-1';
import { edition2 } from './edition-2';
import type { Content } from './model';

interface Edition { readonly edition: number; readonly content: Content }

/** Every published edition, oldest first. A new one is added at the end; none is ever taken away. */
export const editions: readonly [Edition, ...Edition[]] = [
  { edition: 1, content: edition1 },
  { edition: 2, content: edition2 },
];

/** The edition in force: a new assessment starts with it, and every document is scored with it unless another is asked for. */
export const currentContent: Content = (editions.at(-1) ?? editions[0]).content;

/** @returns the edition whose version a saved assessment names, or undefined when it was never published */
export function contentByVersion(version: string): Content | undefined {
  return editions.find((edition) => edition.content.version === version)?.content;
}

/** @returns the edition of that number, counted from 1, or undefined */
export function contentByEdition(number: number): Content | undefined {
  return editions.find((edition) => edition.edition === number)?.content;
}
