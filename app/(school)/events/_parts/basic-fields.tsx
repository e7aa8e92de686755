import Link from 'next/link';
import { FormLine, FormNumber, FormSelect, FormText } from '@/app/_components/form/form-fields';
import type { EventBasics } from '@/lib/events/event';
import { writeSchedule } from '@/lib/events/schedule';
import { localOfMoment } from '@/lib/forms/local-moment';

interface BasicFieldsProps {
  readonly sites: readonly { readonly id: string; readonly name: string; readonly kind: string }[];
  readonly timeZone: string;
  readonly event?: EventBasics;
}

/** What, where, when, and how many. */
export function BasicFields({ sites, timeZone, event }: BasicFieldsProps) {
  const count = (value: number | null | undefined): string => (value === null || value === undefined ? '' : String(value));
  return (
    <div className="stack fields">
      <FormLine name="title" label="Name of the event" hint="Such as Autumn cup, round 2" value={event?.title} maxLength={120} autoComplete="off" />
      <FormSelect name="siteId" label="Place" value={event?.siteId ?? ''} hint={<>Not in the list? <Link href="/places/new" prefetch={false}>Describe the venue first</Link>; name and address are enough, its own staff can say the rest.</>} options={[{ value: '', label: 'Choose' }, ...sites.map(({ id, name, kind }) => ({ value: id, label: kind === 'away' ? `${name} (away)` : name }))]} />
      <div className="two-up">
        <FormLine name="starts" label="Begins" type="datetime-local" value={event === undefined ? '' : localOfMoment(event.startsAt, timeZone)} hint={timeZone} />
        <FormLine name="ends" label="Ends" type="datetime-local" value={event === undefined ? '' : localOfMoment(event.endsAt, timeZone)} />
      </div>
      <div className="two-up">
        <FormNumber name="teams" label="Teams" value={count(event?.teams)} />
        <FormNumber name="people" label="People of the teams" hint="Students and adults in the room" value={count(event?.people)} />
        <FormNumber name="spectators" label="Spectators, at most" value={count(event?.spectators)} />
      </div>
      <FormText name="schedule" label="The day" hint="A line for each: 09:00 Doors open" rows={5} value={event === undefined ? '' : writeSchedule(event.schedule)} />
    </div>
  );
}
