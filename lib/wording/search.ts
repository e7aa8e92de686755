import type { BestSet } from '@/lib/core/result';

/** What has to be said of a best set whose search was given up; nothing of one that was found exactly. */
export function searchWords({ complete }: Pick<BestSet, 'complete'>): string {
  return complete ? '' : 'Not every set could be looked at, because one risk is so much larger than all others; a better one may exist.';
}
