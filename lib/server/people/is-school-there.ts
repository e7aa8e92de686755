import 'server-only';
import { connection } from 'next/server';
import { hasSchool } from '@/lib/db/people/schools';
import { database } from '../database';

/** Says whether the first run is over. Never asked while the program is built, when there is no database. */
export async function isSchoolThere(): Promise<boolean> {
  await connection();
  return hasSchool(database());
}
