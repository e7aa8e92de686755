import type { Db } from '../client';
import { lockInstallation } from '../installation';
import { runInTransaction } from '../transaction';
import { createSchool, type NewSchool } from './create-school';
import { hasSchool } from './schools';

/**
 * Makes the first school and its safety officer, with the log's first entries: all of it or nothing. Of two at the same
 * moment one is made.
 * @returns false when there was a school already; then nothing was written
 */
export async function writeBeginning(db: Db, school: NewSchool): Promise<boolean> {
  return runInTransaction(db, async (tx) => {
    await lockInstallation(tx);
    if (await hasSchool(tx)) return false;
    await createSchool(tx, school);
    return true;
  });
}
