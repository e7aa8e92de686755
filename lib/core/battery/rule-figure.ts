import type { PackRule } from '@/lib/content/model';

/**
 * The figure of a rule by its id.
 * @throws when there is no such rule or it has no figure: a fault of the content
 */
export function figureOfRule(rules: readonly PackRule[], id: string): number {
  const value = rules.find((rule) => rule.id === id)?.value;
  if (typeof value !== 'number') throw new Error(`the pack limits have no figure for ${id}`);
  return value;
}
