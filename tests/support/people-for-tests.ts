import type { NewSchool } from '@/lib/db/people/create-school';

/** What the first run writes, of our own invention. */
export function beginning(schoolName: string, at: Date, email = 'r.oake@ternlane.example'): NewSchool {
  return {
    input: {
      name: 'Rowan Oake', post: 'Deputy head', email, schoolName, schoolAddress: '1 Tern Lane', emergencyNumber: '999', meetingPlace: 'North gate',
      secondMeetingPlace: null, officerPhone: null, units: 'metric', paper: 'A4', locale: 'en-GB', timeZone: 'Europe/London',
    },
    passwordHash: '$argon2id$not-a-real-one',
    at,
  };
}
