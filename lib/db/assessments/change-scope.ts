import type { ScopeInput, SettingsInput } from '@/lib/assessments/assessment-input';
import { isOpen } from '@/lib/assessments/standing';
import { scopeFingerprint, ScopeSchema, SettingsSchema } from '@/lib/assessments/version';
import type { AuditAuthor } from '@/lib/audit/event';
import { recordChange } from '../audit/record-change';
import type { Db } from '../client';
import { schoolScope } from '../scope';
import { MetAnother } from '../why-to-try-again';
import { type Done, notDone, NOT_THERE, nothing, type Written } from './not-done';

interface Row { readonly visited: boolean | null; readonly visitedOn: string | null; readonly scopeJson: string; readonly settingsJson: string }
type Columns = Partial<Row>;

const CLOSED = notDone('This version is closed: it does not change any more.');
const CHANGED = notDone('Somebody else has changed this since you opened it. Open the page again and look; what you typed still stands here.');

/** Writes down who has been there, what was seen and what was taken on trust, if nobody else did meanwhile. */
export async function changeScope(db: Db, by: AuditAuthor, at: Date, input: ScopeInput): Promise<Done> {
  return change(db, by, at, input.versionId, (row) => {
    const before = ScopeSchema.parse(JSON.parse(row.scopeJson));
    if (scopeFingerprint({ ...row, scope: before }) !== input.before) return null;
    const { seen, onTrust, visitedBy } = input;
    return { visited: input.visited === 'yes', visitedOn: input.visitedOn, scopeJson: JSON.stringify({ ...before, seen: seen ?? '', onTrust: onTrust ?? '', visitedBy: visitedBy ?? '' }) };
  });
}

/** Chooses the matrix and how much effort can be spent. */
export async function changeSettings(db: Db, by: AuditAuthor, at: Date, input: SettingsInput): Promise<Done> {
  return change(db, by, at, input.versionId, (row) => {
    const { matrix, effortBudget } = input;
    const before = SettingsSchema.parse(JSON.parse(row.settingsJson));
    return { settingsJson: JSON.stringify({ ...before, matrix, effortBudget: effortBudget ?? undefined }) };
  });
}

async function change(db: Db, by: AuditAuthor, at: Date, versionId: string, columnsFor: (row: Row) => Columns | null): Promise<Done> {
  const scope = schoolScope(by);
  return recordChange(db, by, at, async (tx): Promise<Written> => {
    const row = await tx.assessmentVersion.findFirst({ where: { ...scope, id: versionId }, select: { state: true, revision: true, visited: true, visitedOn: true, scopeJson: true, settingsJson: true } });
    if (row === null) return nothing(NOT_THERE);
    if (!isOpen(row.state)) return nothing(CLOSED);
    const columns = columnsFor(row);
    if (columns === null) return nothing(CHANGED);
    const changed = (Object.keys(columns) as (keyof Row)[]).filter((name) => columns[name] !== row[name]);
    if (changed.length === 0) return { value: { ok: true }, events: [] };
    const { count } = await tx.assessmentVersion.updateMany({ where: { ...scope, id: versionId, revision: row.revision }, data: { ...columns, revision: row.revision + 1 } });
    if (count !== 1) throw new MetAnother('The version was changed at the same moment');
    const changes = Object.fromEntries(changed.map((name) => [name, { from: row[name], to: columns[name] ?? null }]));
    return { value: { ok: true }, events: [{ kind: 'assessment.changed', subjectId: versionId, data: { changes } }] };
  });
}
