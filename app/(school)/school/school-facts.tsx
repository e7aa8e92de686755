import type { SchoolFields } from '@/lib/people/school-fields';

/** The school as those see it who may not change it. */
export function SchoolFacts({ school }: { readonly school: SchoolFields }) {
  const facts: readonly (readonly [string, string | null])[] = [
    ['Address', school.schoolAddress],
    ['Number to call when there is a fire', school.emergencyNumber],
    ['Meeting place', school.meetingPlace],
    ['Second meeting place', school.secondMeetingPlace],
    ['Telephone of the safety officer', school.officerPhone],
    ['Time zone', school.timeZone.replaceAll('_', ' ')],
  ];
  return (
    <dl className="facts">
      {facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value ?? 'not given'}</dd></div>)}
    </dl>
  );
}
