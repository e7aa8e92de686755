import { z } from 'zod';
import { ROLES } from '@/lib/access/roles';
import { emailAddress, line, oneOf, optional } from '@/lib/forms/fields';
import { DAY_MS } from '@/lib/units/time';

/** Long enough for somebody who is away for a few days; short enough that a forgotten link opens nothing next season. */
export const INVITATION_DAYS = 7;

export const InviteInputSchema = z.object({
  forWhom: line('Enter whom the link is for', 100),
  email: optional(emailAddress('')),
  role: oneOf(ROLES, 'Choose what they may do'),
});

export type InviteInput = z.output<typeof InviteInputSchema>;

export const RevokeInputSchema = z.object({ invitationId: z.string() });

export const AcceptInputSchema = z.object({
  token: z.string(),
  name: line('Enter your name', 100),
  post: line('Enter your post, such as teacher or coach', 100),
  email: emailAddress('Enter your e-mail address'),
  password: z.string({ error: 'Enter a password' }).min(1, 'Enter a password'),
});

export type AcceptInput = z.output<typeof AcceptInputSchema>;

/** The same by somebody who signs in already: what they are called is known, but not what they do at that school. */
export const JoinInputSchema = z.object({ token: z.string(), post: AcceptInputSchema.shape.post });

export type JoinInput = z.output<typeof JoinInputSchema>;

export const TokenSchema = z.object({ token: z.string() });

/** The page of a link. */
export function invitationPath(token: string): `/${string}` {
  return `/invitation/${encodeURIComponent(token)}`;
}

/** Until when a link made now can be used. */
export function invitationEnd(madeAt: Date): Date {
  return new Date(madeAt.getTime() + INVITATION_DAYS * DAY_MS);
}

export interface InvitationState {
  readonly expiresAt: Date;
  readonly usedAt: Date | null;
  readonly revokedAt: Date | null;
}

export type InvitationVerdict<Invitation> = { readonly ok: true; readonly invitation: Invitation } | { readonly ok: false; readonly reason: string };

/** Returns whether a link can still be used. Whoever holds it may know what became of it. */
export function judgeInvitation<Invitation extends InvitationState>(invitation: Invitation | null, now: Date): InvitationVerdict<Invitation> {
  if (!invitation) return { ok: false, reason: 'This link is not one of ours. Perhaps a part of it is missing: copy it again, whole' };
  if (invitation.usedAt) return { ok: false, reason: 'This link was used already. Sign in, or ask your safety officer for another' };
  if (invitation.revokedAt) return { ok: false, reason: 'This link was taken back. Ask your safety officer for another' };
  if (invitation.expiresAt <= now) return { ok: false, reason: `This link is too old: it worked for ${INVITATION_DAYS} days. Ask your safety officer for another` };
  return { ok: true, invitation };
}
