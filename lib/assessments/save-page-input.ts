import { z } from 'zod';
import { line } from '@/lib/forms/fields';

/** A page of the walk as it is sent; the fields of its questions pass, to be read by the questions themselves. */
export const SavePageSchema = z.looseObject({
  versionId: line('No assessment was named'),
  pageId: line('No page was named'),
  /** which button was pressed; the return key presses the first */
  then: z.enum(['on', 'stop']).default('on'),
  /** a question whose answer is to be what the register says */
  take: z.string().optional(),
  /** a photo that is to be taken away */
  drop: z.string().optional(),
});
export type SavePageInput = z.output<typeof SavePageSchema>;
