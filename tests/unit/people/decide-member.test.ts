import { describe, expect, it } from 'vitest';
import { ROLES, type Role } from '@/lib/access/roles';
import { decideMember, type MemberState } from '@/lib/people/decide-member';

const member = (personId: string, role: Role, isActive = true): MemberState => ({ personId, role, isActive });
const officer = member('ann', 'safety-officer');
const coach = member('ben', 'organiser');
const gone = member('cyd', 'safety-officer', false);

describe('decideMember', () => {
  it('keeps the only officer who can sign in, whatever closed accounts there are', () => {
    const members = [officer, coach, gone];
    for (const role of ROLES.filter((name) => name !== 'safety-officer')) {
      expect(decideMember(members, { kind: 'role', personId: 'ann', role })).toMatchObject({ ok: false, reason: expect.stringContaining('only safety officer') as string });
    }
    expect(decideMember(members, { kind: 'close', personId: 'ann' })).toMatchObject({ ok: false });
  });

  it('lets an officer go when there is another', () => {
    const members = [officer, member('dee', 'safety-officer'), coach];
    expect(decideMember(members, { kind: 'close', personId: 'ann' })).toEqual({ ok: true, before: officer });
    expect(decideMember(members, { kind: 'role', personId: 'ann', role: 'helper' })).toEqual({ ok: true, before: officer });
  });

  it('changes roles and closes accounts of everybody else', () => {
    expect(decideMember([officer, coach], { kind: 'role', personId: 'ben', role: 'safety-officer' })).toEqual({ ok: true, before: coach });
    expect(decideMember([officer, coach], { kind: 'close', personId: 'ben' })).toEqual({ ok: true, before: coach });
  });

  it('opens a closed account again, and only a closed one', () => {
    expect(decideMember([officer, gone], { kind: 'reopen', personId: 'cyd' })).toEqual({ ok: true, before: gone });
    expect(decideMember([officer, gone], { kind: 'reopen', personId: 'ann' })).toMatchObject({ ok: false });
    expect(decideMember([officer, gone], { kind: 'role', personId: 'cyd', role: 'helper' })).toMatchObject({ ok: false });
    expect(decideMember([officer, gone], { kind: 'close', personId: 'cyd' })).toMatchObject({ ok: false });
  });

  it('refuses a change that changes nothing, and people of other schools', () => {
    expect(decideMember([officer, coach], { kind: 'role', personId: 'ben', role: 'organiser' })).toMatchObject({ ok: false });
    expect(decideMember([officer, coach], { kind: 'role', personId: 'zoe', role: 'helper' })).toMatchObject({ ok: false, reason: expect.stringContaining('does not belong') as string });
  });
});
