import Link from 'next/link';
import type { ReactNode } from 'react';
import { Section } from '@/app/_components/ui/section';
import { ADULT_PARTS, CHARGING_THERE, DAMAGED_THERE, OVERNIGHT, TRAVEL_WAYS } from '@/lib/events/choices';
import { labelOf } from '@/lib/forms/choices';
import type { EventView } from '@/lib/server/events/event-view';
import { rounded } from '@/lib/wording/numbers';

/** What the event is, part by part, each with its way to be changed. */
export function FactsPart({ view }: { readonly view: EventView }) {
  return <><DayPart view={view} /><PacksPart view={view} /><PeoplePart view={view} /><ThereAndBack view={view} /></>;
}

interface PartProps { readonly view: EventView }

function change({ event, may }: EventView, page: string, what: string): ReactNode {
  return may.change ? <Link href={`/events/${event.id}/${page}`} prefetch={false}>Change<span className="vh"> {what}</span></Link> : undefined;
}

function DayPart({ view }: PartProps) {
  const { event, site, when } = view;
  return (
    <Section id="day" title="What, where, when" aside={change(view, 'edit', 'what, where and when')}>
      <dl className="facts">
        <Fact name="When" value={when} />
        <Fact name="Where" value={<><Link href={`/places/${site.id}`} prefetch={false}>{site.name}</Link>, {site.address}</>} />
        <Fact name="Teams" value={event.teams} />
        <Fact name="People of the teams" value={event.people} />
        <Fact name="Spectators, at most" value={event.spectators} />
      </dl>
      {event.schedule.length === 0 ? null : <ol className="schedule">{event.schedule.map(({ time, what }) => <li key={`${time} ${what}`}><b className="num">{time}</b> {what}</li>)}</ol>}
    </Section>
  );
}

function PacksPart({ view }: PartProps) {
  const { packs, totalWh, packsWithoutEnergy } = view;
  return (
    <Section id="packs" title={packs.length === 1 ? 'One pack goes along' : `${packs.length} packs go along`} aside={change(view, 'packs', 'the packs')}>
      {packs.length === 0 ? <p>None is chosen yet.</p> : (
        <>
          <p className="pack-row">{packs.map(({ pack }) => <Link key={pack.id} href={`/packs/${pack.id}`} prefetch={false} className="num">{pack.label}</Link>)}</p>
          <p>{rounded(totalWh)} Wh together{packsWithoutEnergy === 0 ? '.' : `, without ${packsWithoutEnergy} of which nobody knows the energy.`}</p>
        </>
      )}
    </Section>
  );
}

function PeoplePart({ view }: PartProps) {
  const { adults } = view.event;
  return (
    <Section id="people" title="Adults who answer" aside={change(view, 'people', 'the adults')}>
      {adults.length === 0 ? <p>Nobody is named yet.</p> : (
        <ul className="rows">{adults.map(({ name, phone, parts }) => <li key={`${name} ${phone ?? ''}`}><h3>{name}</h3><p className="small">{parts.map((part) => labelOf(ADULT_PARTS, part)).join(', ')}. {phone === null ? 'No telephone number.' : <a href={`tel:${phone.replace(/[^\d+]/g, '')}`}>{phone}</a>}</p></li>)}</ul>
      )}
    </Section>
  );
}

function ThereAndBack({ view }: PartProps) {
  const { details } = view.event;
  return (
    <>
      <Section id="venue" title="At the venue" aside={change(view, 'venue', 'what is known of the venue')}>
        <dl className="facts">
          <Fact name="Its own alarm" value={details.alarm} />
          <Fact name="Charging there" value={labelOf(CHARGING_THERE, details.charging)} />
          <Fact name="A pack that is damaged there" value={labelOf(DAMAGED_THERE, details.damaged)} />
          <Fact name="Packs overnight" value={labelOf(OVERNIGHT, details.night)} />
        </dl>
      </Section>
      <Section id="travel" title="The way there" aside={change(view, 'travel', 'the way there')}>
        <dl className="facts"><Fact name="How packs travel" value={labelOf(TRAVEL_WAYS, details.way)} /><Fact name="Vehicle" value={details.vehicle} /></dl>
      </Section>
    </>
  );
}

function Fact({ name, value }: { readonly name: string; readonly value: ReactNode }) {
  return <div><dt>{name}</dt><dd>{value === null || value === undefined || value === '' ? <span className="muted">not known</span> : value}</dd></div>;
}
