import { describe, expect, it } from 'vitest';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { schoolDefaults } from '@/lib/people/school-defaults';
import { SchoolFieldsSchema } from '@/lib/people/school-fields';

const typed = {
  schoolName: 'Tern Lane School', schoolAddress: '1 Tern Lane', emergencyNumber: '999', meetingPlace: 'North gate', secondMeetingPlace: '', officerPhone: '',
  units: 'metric', paper: 'A4', locale: 'en-GB', timeZone: 'Europe/London',
};
const faults = (change: Record<string, string>) => {
  const parsed = SchoolFieldsSchema.safeParse({ ...typed, ...change });
  return parsed.success ? [] : faultsOfIssues(parsed.error.issues);
};

describe('SchoolFieldsSchema', () => {
  it('keeps what may be left empty as null', () => {
    expect(SchoolFieldsSchema.parse(typed)).toEqual({ ...typed, secondMeetingPlace: null, officerPhone: null });
  });

  it.each(['112', '911', '000', '0118 999 881', '+44 20 7946 0000', '(02) 1234-567'])('takes the number %s as it is dialled anywhere', (emergencyNumber) => {
    expect(faults({ emergencyNumber })).toEqual([]);
  });

  it.each(['call the office', '9', 'tel:112', '112; rm'])('refuses the number %s', (emergencyNumber) => {
    expect(faults({ emergencyNumber })).toMatchObject([{ field: 'emergencyNumber' }]);
  });

  it('says one thing for each field that is wrong, the optional ones too', () => {
    expect(faults({ schoolName: ' ', officerPhone: 'ask Ann', timeZone: 'Mars/Olympus', paper: 'A5' }).map(({ field }) => field)).toEqual(['schoolName', 'officerPhone', 'paper', 'timeZone']);
    expect(faults({ officerPhone: 'ask Ann' })[0]?.message).toContain('as you would dial it');
  });
});

describe('schoolDefaults', () => {
  it('offers what is usual where the browser comes from', () => {
    expect(schoolDefaults('en-US,en;q=0.9')).toEqual({ locale: 'en-US', units: 'us', paper: 'Letter' });
    expect(schoolDefaults('en-CA')).toEqual({ locale: 'en-CA', units: 'metric', paper: 'Letter' });
    expect(schoolDefaults('de,en;q=0.5')).toEqual({ locale: 'de-DE', units: 'metric', paper: 'A4' });
  });

  it('offers British English where nothing is known', () => {
    for (const header of [null, '', '*', 'tlh']) expect(schoolDefaults(header)).toMatchObject({ locale: 'en-GB' });
  });
});
