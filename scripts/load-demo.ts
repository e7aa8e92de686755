// Fills an empty database with the demo school. Started by `npm start -- --demo`, with its settings in the environment.
import { z } from 'zod';
import { openDatabase } from '@/lib/db/client';
import { hasSchool } from '@/lib/db/people/schools';
import { calendarDay } from '@/lib/wording/dates';
import { loadDemo } from './demo/load';
import { SCHOOL } from './demo/people';

const settings = z.object({
  DATABASE_URL: z.string().startsWith('file:'), DEMO_PASSWORD: z.string().min(12), DEMO_ADDRESS: z.url(),
  DEMO_TODAY: z.iso.date().default(calendarDay(new Date(), SCHOOL.timeZone)),
}).parse(process.env);

const db = openDatabase(settings.DATABASE_URL);
try {
  if (await hasSchool(db)) throw new Error('There is a school in this database already: the demo is loaded into an empty one only.');
  await loadDemo({ db, today: settings.DEMO_TODAY, password: settings.DEMO_PASSWORD, address: settings.DEMO_ADDRESS });
  console.log('The demo school is loaded.');
} finally {
  await db.$disconnect();
}
