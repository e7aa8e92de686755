import 'server-only';
import type { Role } from '@/lib/access/roles';
import { listOpenInvitations } from '@/lib/db/people/invitations';
import { schoolScope } from '@/lib/db/scope';
import { invitationPath } from '@/lib/people/invitation';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from './current-school';
import { tokenOf } from './invitation-token';
import { publicAddress } from './public-address';

export interface OpenInvitation {
  readonly id: string;
  readonly forWhom: string;
  readonly role: Role;
  /** the link itself, to be passed on */
  readonly address: string;
  /** when it ends, written as the school writes dates */
  readonly until: string;
}

/** Returns the links of the actor's school that still work, the latest first. */
export async function listInvitations(actor: Actor): Promise<readonly OpenInvitation[]> {
  const { locale, timeZone } = await currentSchool(actor);
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'full', timeStyle: 'short', timeZone });
  const invitations = await listOpenInvitations(database(), schoolScope(actor), new Date());
  return Promise.all(invitations.map(async ({ id, forWhom, role, expiresAt }) => ({
    id, forWhom, role, until: format.format(expiresAt), address: await publicAddress(invitationPath(tokenOf(id))),
  })));
}
