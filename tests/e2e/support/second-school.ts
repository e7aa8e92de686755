import { hash } from '@node-rs/argon2';
import { openDatabase } from '@/lib/db/client';
import { createSchool } from '@/lib/db/people/create-school';
import { runInTransaction } from '@/lib/db/transaction';
import { OTHER_OFFICER, OTHER_SCHOOL, type SignIn } from './sign-ins';

/** Makes another school in the server's database, as no page can: the first run is open once. */
export async function makeSecondSchool(schoolName = OTHER_SCHOOL, { name, email, password }: SignIn = OTHER_OFFICER): Promise<void> {
  const url = process.env.E2E_DATABASE_URL;
  if (url === undefined) throw new Error('E2E_DATABASE_URL is set by playwright.config.ts');
  const db = openDatabase(url);
  try {
    const passwordHash = await hash(password);
    await runInTransaction(db, (tx) => createSchool(tx, {
      input: {
        name, email, post: 'Head', schoolName, schoolAddress: '2 Ford Road', emergencyNumber: '112', meetingPlace: 'Yard',
        secondMeetingPlace: null, officerPhone: null, units: 'metric', paper: 'A4', locale: 'en-GB', timeZone: 'Europe/London',
      },
      passwordHash,
      at: new Date(),
    }));
  } finally {
    await db.$disconnect();
  }
}
