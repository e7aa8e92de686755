import type { Acceptable } from '@/lib/content/model';

export interface AcceptanceWords { readonly lead: string; readonly words: string }

/** Whether somebody may accept a stop that is not settled, as the content words it; null where the edition does not say. */
export function acceptanceWords(acceptable: Acceptable | undefined): AcceptanceWords | null {
  if (acceptable === undefined) return null;
  if (acceptable.kind === 'never') return { lead: 'Never accepted.', words: acceptable.text };
  if (acceptable.kind === 'with-paper') return { lead: 'Accepted with a paper only.', words: acceptable.text };
  return { lead: `Accepted for ${acceptable.days} days at most, with something in its place.`, words: `${acceptable.text} ${acceptable.replacedBy}` };
}
