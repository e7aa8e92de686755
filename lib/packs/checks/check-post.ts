import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { CHECK_PAGE_IDS, type CheckPageId } from './check-pages';
import type { CheckTyped } from './check-answers';

/** A page of a check as it is sent: which page, everything given so far, and whether somebody wants back to a page. */
export const CheckPostSchema = z.object({
  packId: line('Choose a pack'),
  page: z.enum(CHECK_PAGE_IDS as readonly [CheckPageId, ...CheckPageId[]]),
  back: z.enum(CHECK_PAGE_IDS as readonly [CheckPageId, ...CheckPageId[]]).optional(),
}).catchall(z.string().max(40));

export type CheckPost = z.output<typeof CheckPostSchema>;

/** What the form shows next. */
export interface CheckForm {
  readonly page: CheckPageId;
  /** carried along from the pages before */
  readonly typed: CheckTyped;
}

/** What was ticked and typed, without what steers the form. */
export function typedOf({ packId: _packId, page: _page, back: _back, ...typed }: CheckPost): CheckTyped {
  return typed;
}
