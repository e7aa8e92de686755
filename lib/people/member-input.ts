import { z } from 'zod';
import { ROLES } from '@/lib/access/roles';
import { oneOf } from '@/lib/forms/fields';

export const RoleInputSchema = z.object({ personId: z.string(), role: oneOf(ROLES, 'Choose what they may do') });
export const MemberStateInputSchema = z.object({ personId: z.string() });
export const ForgetPersonSchema = MemberStateInputSchema.extend({ sure: z.literal('yes', { error: 'Tick that you want to remove it for good' }) });
