import Link from 'next/link';
import { dialAddress } from '@/lib/wording/telephone';
import type { CurrentSchool } from '@/lib/server/people/current-school';

/** What everybody has to know by heart, each day. */
export function AlarmLine({ school: { emergencyNumber, meetingPlace } }: { readonly school: Pick<CurrentSchool, 'emergencyNumber' | 'meetingPlace'> }) {
  const dial = dialAddress(emergencyNumber);
  return (
    <p className="alarm-line">
      <strong>Smoke, hiss or heat: out, alarm, call {dial === null ? emergencyNumber : <a href={dial}>{emergencyNumber}</a>} from outside.</strong> Meet: {meetingPlace}. <Link href="/emergency" prefetch={false}>What to do</Link>
    </p>
  );
}
