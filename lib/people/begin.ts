import { z } from 'zod';
import { emailAddress, line } from '@/lib/forms/fields';
import { SCHOOL_FIELDS } from './school-fields';

/** What the first run asks: the school, and its first safety officer. The password is judged by `passwordFault`. */
export const BeginInputSchema = z.object({
  setupCode: z.string().trim().toUpperCase().optional(),
  ...SCHOOL_FIELDS,
  name: line('Enter your name', 100),
  post: line('Enter your post, such as deputy head or safety officer', 100),
  email: emailAddress('Enter your e-mail address'),
  password: z.string({ error: 'Enter a password' }).min(1, 'Enter a password'),
});

export type BeginInput = z.output<typeof BeginInputSchema>;
