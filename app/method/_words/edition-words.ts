import { contentByEdition, currentContent, editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';

export interface ShownEdition { readonly number: number; readonly content: Content; /** whether a new assessment starts with it */ readonly inForce: boolean }

/** The edition an address asks for; without a number that exists, the one in force. */
export function editionAsked(asked: unknown): ShownEdition {
  const number = typeof asked === 'string' && /^\d{1,3}$/.test(asked) ? Number(asked) : undefined;
  const content = (number === undefined ? undefined : contentByEdition(number)) ?? currentContent;
  return { number: numberOf(content), content, inForce: content === currentContent };
}

/** @returns the number of a published edition, counted from 1 */
function numberOf(content: Content): number {
  const known = editions.find((edition) => edition.content === content);
  if (known === undefined) throw new Error(`content ${content.version} was never published`);
  return known.edition;
}
