import 'server-only';
import { hasSchool } from '@/lib/db/people/schools';
import { database } from '../database';

/** Says whether the first run is over. */
export function isSchoolThere(): Promise<boolean> {
  return hasSchool(database());
}
