import { z } from 'zod';
import { emailAddress } from '@/lib/forms/fields';

export const SignInInputSchema = z.object({
  email: emailAddress('Enter your e-mail address'),
  password: z.string({ error: 'Enter your password' }).min(1, 'Enter your password'),
  /** the page that was asked for before signing in */
  then: z.string().optional(),
});

export type SignInInput = z.output<typeof SignInInputSchema>;

/** Says nothing about which of the two is wrong, nor whether there is such an account. */
export const WRONG_SIGN_IN = 'Address and password do not belong together. Check both';
