import { z } from 'zod';

export const ChangePasswordInputSchema = z
  .object({
    currentPassword: z.string({ error: 'Enter your present password' }).min(1, 'Enter your present password'),
    newPassword: z.string({ error: 'Enter a new password' }).min(1, 'Enter a new password'),
  })
  .refine(({ currentPassword, newPassword }) => currentPassword !== newPassword, { path: ['newPassword'], error: 'This is your present password. Choose another' });

export type ChangePasswordInput = z.output<typeof ChangePasswordInputSchema>;
