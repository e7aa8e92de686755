import { z } from 'zod';
import { changes, day, id, moment, none, words } from './parts';

const name = z.strictObject({ name: words });
const role = z.string().min(1);

/** Of the school, its people, sites and areas. The subject is the school, the person, the invitation, the site or the area. */
export const SCHOOL_EVENTS = {
  'school.begun': name,
  'school.changed': z.strictObject({ changes }),
  'school.exported': z.strictObject({ what: words }),

  'person.joined': z.strictObject({ name: words, role, invitationId: id.nullable() }),
  'person.changed': z.strictObject({ changes }),
  'person.role-changed': z.strictObject({ from: role, to: role }),
  'person.left': z.strictObject({ reason: words.nullable() }),
  'person.back': none,
  'person.forgotten': none,
  'person.password-link-made': none,
  'person.password-changed': none,
  'person.signed-out-everywhere': none,
  'invitation.made': z.strictObject({ role, forWhom: words, expiresAt: moment }),
  'invitation.revoked': none,

  'site.added': name,
  'site.changed': z.strictObject({ changes }),
  'site.archived': none,
  'site.brought-back': none,
  'area.added': z.strictObject({ name: words, use: words, siteId: id }),
  'area.changed': z.strictObject({ changes }),
  'area.archived': none,
  'area.brought-back': none,

  'personal-data.removed': z.strictObject({ what: words, olderThan: day.nullable() }),
};
