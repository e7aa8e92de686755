import { describe, expect, it } from 'vitest';
import { InviteInputSchema, invitationEnd, judgeInvitation } from '@/lib/people/invitation';

const madeAt = new Date('2026-11-25T12:00:00Z');
const open = { expiresAt: invitationEnd(madeAt), usedAt: null, revokedAt: null };

describe('judgeInvitation', () => {
  it('lets a link be used until the moment it ends', () => {
    expect(judgeInvitation(open, new Date('2026-12-02T11:59:59.999Z'))).toEqual({ ok: true, invitation: open });
    expect(judgeInvitation(open, new Date('2026-12-02T12:00:00Z'))).toMatchObject({ ok: false, reason: expect.stringContaining('too old') as string });
  });

  it('says what became of a link that is used, taken back or unknown', () => {
    expect(judgeInvitation({ ...open, usedAt: madeAt }, madeAt)).toMatchObject({ reason: expect.stringContaining('used already') as string });
    expect(judgeInvitation({ ...open, revokedAt: madeAt }, madeAt)).toMatchObject({ reason: expect.stringContaining('taken back') as string });
    expect(judgeInvitation(null, madeAt)).toMatchObject({ reason: expect.stringContaining('not one of ours') as string });
  });
});

describe('InviteInputSchema', () => {
  it('takes only roles there are', () => {
    expect(InviteInputSchema.safeParse({ forWhom: 'Ben', role: 'owner' }).success).toBe(false);
    expect(InviteInputSchema.parse({ forWhom: ' Ben ', email: ' ', role: 'helper' })).toEqual({ forWhom: 'Ben', email: null, role: 'helper' });
    expect(InviteInputSchema.parse({ forWhom: 'Ben', email: 'Ben@School.example', role: 'helper' })).toMatchObject({ email: 'ben@school.example' });
  });
});
