/** What somebody is in a school, in the order of the table's columns. The safety officer also keeps the school's people. */
export const ROLES = ['organiser', 'safety-officer', 'event-organiser', 'helper'] as const;

export type Role = (typeof ROLES)[number];

/** Returns whether a word, of a database or a form, is a role. */
export function isRole(word: string): word is Role {
  return ROLES.some((role) => role === word);
}

/** As a role is called in a sentence. */
export const ROLE_NAMES: Readonly<Record<Role, string>> = {
  'organiser': 'organiser',
  'safety-officer': 'safety officer',
  'event-organiser': 'event organiser',
  'helper': 'helper',
};
