import { z } from 'zod';
import { idsOf } from '@/lib/forms/choices';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { oneOf, optionalLine } from '@/lib/forms/fields';
import type { Fault } from '@/lib/forms/form-state';
import { AFFECTED_ROLES, type AffectedRole, YES_NO, type YesNo } from './choices';

/** Somebody affected: a role and initials. */
export interface Affected {
  readonly role: AffectedRole;
  readonly initials: string | null;
  readonly hurt: YesNo;
  readonly breathed: YesNo;
  readonly firstAid: string | null;
}

/** Rows of the form. More people than that are added afterwards. */
export const PERSON_ROWS = [1, 2, 3, 4] as const;

/** "K. M.", "KM", "K.M.-L.": too short for a name. */
const INITIALS = /^(?:\p{L}[\s.-]*){1,4}$/u;

/** Reads the rows somebody filled in; an empty one is nobody. */
export function readPersons(raw: Readonly<Record<string, unknown>>): { readonly ok: true; readonly value: readonly Affected[] } | { readonly ok: false; readonly faults: readonly Fault[] } {
  const persons: Affected[] = [];
  const faults: Fault[] = [];
  for (const row of PERSON_ROWS) {
    const typed = (part: string): unknown => raw[`person${row}${part}`];
    if (isBlank(typed('Role')) && isBlank(typed('Initials')) && isBlank(typed('FirstAid'))) continue;
    const parsed = PersonFields.safeParse({ Role: typed('Role'), Initials: typed('Initials'), Hurt: typed('Hurt'), Breathed: typed('Breathed'), FirstAid: typed('FirstAid') });
    if (parsed.success) persons.push(parsed.data);
    else faults.push(...faultsOfIssues(parsed.error.issues).map(({ field, message }) => ({ field: `person${row}${field ?? 'Role'}`, message })));
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: persons };
}

const PersonFields = z
  .object({
    Role: oneOf(idsOf(AFFECTED_ROLES), 'Choose who this was'),
    Initials: optionalLine().refine((initials) => initials === null || INITIALS.test(initials), 'Write initials only, such as K. M.; no name'),
    Hurt: oneOf(idsOf(YES_NO), 'Choose whether this person was hurt'),
    Breathed: oneOf(idsOf(YES_NO), 'Choose whether this person breathed smoke'),
    FirstAid: optionalLine(),
  })
  .transform(({ Role: role, Initials: initials, Hurt: hurt, Breathed: breathed, FirstAid: firstAid }) => ({ role, initials, hurt, breathed, firstAid }));

function isBlank(value: unknown): boolean {
  return value === undefined || (typeof value === 'string' && value.trim() === '');
}
