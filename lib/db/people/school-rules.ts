import type { AuditEvent } from '@/lib/audit/event';
import { type SchoolRules, SchoolRulesSchema } from '@/lib/packs/school-rules';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import type { SchoolScope } from '../scope';
import type { Member } from './find-member';

/** The rules a school has set for itself. Throws when they are not in the form in which they are written. */
export async function getSchoolRules(db: Pick<Db, 'school'>, { schoolId }: SchoolScope): Promise<SchoolRules> {
  const { rulesJson } = await db.school.findUniqueOrThrow({ where: { id: schoolId }, select: { rulesJson: true } });
  return SchoolRulesSchema.parse(JSON.parse(rulesJson));
}

/**
 * Writes the rules of a school, when nobody changed the school since `revision`.
 * @returns false when somebody did; then nothing was written
 */
export async function writeSchoolRules(db: Db, by: Member, at: Date, rules: SchoolRules, revision: number): Promise<boolean> {
  return recordChange(db, by, at, async (tx) => {
    const { rulesJson } = await tx.school.findUniqueOrThrow({ where: { id: by.schoolId }, select: { rulesJson: true } });
    const changes = differences(SchoolRulesSchema.parse(JSON.parse(rulesJson)), rules);
    if (Object.keys(changes).length === 0) return { value: true, events: [] };
    const changed = await tx.school.updateMany({ where: { id: by.schoolId, revision }, data: { rulesJson: JSON.stringify(rules), revision: { increment: 1 } } });
    const events: AuditEvent[] = changed.count === 1 ? [{ kind: 'school.changed', subjectId: by.schoolId, data: { changes } }] : [];
    return { value: changed.count === 1, events };
  });
}

/** Null stands for the content's own figure. */
function differences(before: SchoolRules, after: SchoolRules): Record<string, { from: number | null; to: number | null }> {
  const flat = ({ packLimits, checkDays }: SchoolRules): Readonly<Record<string, number | undefined>> => ({ ...packLimits, checkDays });
  const [was, is] = [flat(before), flat(after)];
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter((name) => was[name] !== is[name]);
  return Object.fromEntries(names.map((name) => [`limit ${name}`, { from: was[name] ?? null, to: is[name] ?? null }]));
}
