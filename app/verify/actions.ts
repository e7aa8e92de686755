'use server';

import { z } from 'zod';
import { checkHandedIn, type CheckedFile } from '@/lib/server/papers/check-handed-in';
import { openAction } from '@/lib/server/forms/open-action';

const NO_FILE = 'Choose the PDF that is to be checked';
const FileSchema = z.object({ file: z.instanceof(File, { error: NO_FILE }).refine((file) => file.size > 0 || file.name !== '', NO_FILE) });
const NumberSchema = z.object({ number: z.string({ error: 'Enter the number' }).trim().min(1, 'Enter the number at the foot of the page').max(40, 'That is longer than a number of ours') });

/** Checks a file; nothing of it is kept. */
export const checkFileAction = openAction<typeof FileSchema, CheckedFile>({
  schema: FileSchema,
  run: async ({ file }) => ({ ok: true, done: 'Checked.', data: await checkHandedIn(file.name, new Uint8Array(await file.arrayBuffer())) }),
});

/** Leads to the page of the number, so that it can be kept and passed on. */
export const checkNumberAction = openAction({
  schema: NumberSchema,
  run: ({ number }) => Promise.resolve({ ok: true, then: `/verify?number=${encodeURIComponent(number.toUpperCase())}` }),
});
