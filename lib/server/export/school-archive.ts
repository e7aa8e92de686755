import 'server-only';
import { ActionQuerySchema } from '@/lib/assessments/action-input';
import { AssessmentQuerySchema } from '@/lib/assessments/list';
import { writeCsv } from '@/lib/csv/write-csv';
import { recordChange } from '@/lib/db/audit/record-change';
import { papersOf, picturesOf } from '@/lib/db/export/school-files';
import { readSchoolRow, readTable, SCHOOL_TABLES } from '@/lib/db/export/school-tables';
import { schoolScope } from '@/lib/db/scope';
import { incidentColumns, IncidentQuerySchema } from '@/lib/incidents/incident-list';
import { EXPORT_COLUMNS } from '@/lib/packs/csv-columns';
import { PLACE_COLUMNS, placeLines } from '@/lib/places/csv-columns';
import { SessionQuerySchema } from '@/lib/sessions/session-list';
import { actionsCsv } from '../actions/read-actions';
import type { Actor } from '../actor';
import { assessmentsCsv } from '../assessments/list';
import { database } from '../database';
import { factNames, listOfIncidents } from '../incidents/read-incidents';
import { listOfPacks } from '../packs/read-packs';
import { listOfSites } from '../places/read-places';
import { sessionsCsv } from '../sessions/read-sessions';
import type { ZipEntry } from './zip-stream';

const WHAT = 'All data of the school: every table, the lists as CSV, papers and pictures';

/** Notes in the log that the school's data was taken out, before any of it leaves. */
export function noteExport(actor: Actor, at: Date): Promise<void> {
  return recordChange(database(), actor, at, () => Promise.resolve({ value: undefined, events: [{ kind: 'school.exported', subjectId: actor.schoolId, data: { what: WHAT } }] }));
}

/** Everything the school has, entry by entry. The tables are read one at a time: no more than one is held. */
export async function* schoolArchive(actor: Actor, at: Date): AsyncGenerator<ZipEntry> {
  const [db, scope] = [database(), schoolScope(actor)];
  yield text('READ-ME.txt', READ_ME);
  yield json('export.json', { format: 'sandbucket-school.v1', exportedAt: at, by: actor.name, tables: SCHOOL_TABLES });
  yield json('tables/School.json', [await readSchoolRow(db, scope)]);
  for (const table of SCHOOL_TABLES) yield json(`tables/${table}.json`, await readTable(db, scope, table));
  yield* lists(actor);
  for await (const { name, bytes } of papersOf(db, scope)) yield { name: `papers/${name}`, bytes, packed: true };
  for await (const { name, bytes } of picturesOf(db, scope)) yield { name: `pictures/${name}`, bytes, packed: true };
}

async function* lists(actor: Actor): AsyncGenerator<ZipEntry> {
  const { shown: packs } = await listOfPacks(actor, { find: '', state: 'all' }, new Date());
  yield text('lists/packs.csv', writeCsv(EXPORT_COLUMNS, packs.map(({ pack }) => pack)));
  yield text('lists/places.csv', writeCsv(PLACE_COLUMNS, placeLines(await listOfSites(actor, ''))));
  const { shown: incidents } = await listOfIncidents(actor, IncidentQuerySchema.parse({}));
  yield text('lists/incidents.csv', writeCsv(incidentColumns(await factNames(actor)), incidents));
  yield text('lists/sessions.csv', await sessionsCsv(actor, SessionQuerySchema.parse({})));
  yield text('lists/actions.csv', await actionsCsv(actor, ActionQuerySchema.parse({ state: 'all' })));
  yield text('lists/assessments.csv', await assessmentsCsv(actor, AssessmentQuerySchema.parse({ state: 'all' })));
}

const text = (name: string, words: string): ZipEntry => ({ name, bytes: new TextEncoder().encode(words) });
const json = (name: string, value: unknown): ZipEntry => text(name, `${JSON.stringify(value, (_, one: unknown) => (typeof one === 'bigint' ? one.toString() : one), 1)}\n`);

const READ_ME = `All data of your school out of Sandbucket.

tables/    every table as JSON, one file each, dates in UTC. AuditEntry is the log: each entry holds the hash of the one before.
lists/     the lists as you see them, as CSV for a spreadsheet.
papers/    every paper as PDF, as it was last signed, under its number.
pictures/  photos under their id; tables/StoredFile.json says which is which.

Not in it: passwords, keys and the secret parts of links. It holds names and may hold initials of persons who were hurt:
keep it where only those who need it can read it, and remove it when you are done.
To move the program to another machine, copy its data folder instead (README, "Where data lives, and backup").
`;
