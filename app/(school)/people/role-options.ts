import type { Option } from '@/app/_components/form/form-fields';
import { ROLE_NAMES, ROLES, type Role } from '@/lib/access/roles';

/** What each role is for, in one line. Who may do what in full stands in lib/access/table.ts. */
const PURPOSES: Readonly<Record<Role, string>> = {
  'organiser': 'prepares assessments, keeps packs, follows incidents up',
  'safety-officer': 'checks, returns and signs; looks after people and the school’s rules',
  'event-organiser': 'makes the venue’s file for one date and place',
  'helper': 'logs checks, sessions and incidents',
};

export const ROLE_OPTIONS: readonly Option[] = ROLES.map((role) => ({ value: role, label: roleTitle(role), hint: PURPOSES[role] }));

/** A role as it stands at the beginning of a line. */
export function roleTitle(role: Role): string {
  const name = ROLE_NAMES[role];
  return name.charAt(0).toUpperCase() + name.slice(1);
}
