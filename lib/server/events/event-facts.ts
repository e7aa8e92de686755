import 'server-only';
import { guidanceWords } from '@/lib/content/fill-guidance';
import { ADULT_PARTS, labelOf, TEAM_CONTROLS } from '@/lib/events/choices';
import type { JudgedLine } from '@/lib/events/check/check-event';
import { GROUP_TITLES } from '@/lib/events/check/line';
import { goesByAir } from '@/lib/events/details';
import type { EventAdult } from '@/lib/events/event';
import type { Signer } from '@/lib/papers/assessment/facts';
import type { EventFacts } from '@/lib/papers/event/facts';
import { calendarDay, calendarDayWords, dayWords, type DateStyle, momentWords } from '@/lib/wording/dates';
import { areaFact } from './area-fact';
import { assessmentFact } from './assessment-fact';
import { energyOf, meetingOf } from './check-facts';
import { detailsFacts } from './details-facts';
import type { EventInFull } from './event-in-full';
import { packFact } from './pack-fact';
import { restsForce } from './rests-force';
import { agreement, venueConditions } from './venue-conditions';
import { whenWords } from './when-words';

/** What a paper needs besides the event: its number, who signs it, where it is read and checked. */
export interface EventMakings extends Pick<EventFacts, 'number' | 'verifyAt' | 'readAt' | 'fingerprint'> {
  readonly preparer: Signer;
  readonly officer: Signer;
}

/** All of what is kept about an event, as the facts of its papers. */
export function eventFacts(full: EventInFull, makings: EventMakings): EventFacts {
  const { event, content, school, site, packs, limits, rests, now } = full;
  const style: DateStyle = { locale: school.locale, timeZone: school.timeZone };
  const { details } = event;
  const place = meetingOf(site, school);
  const energies = packs.map((pack) => energyOf(limits, pack));
  return {
    ...makings, content,
    guidance: guidanceWords(content.guidance?.fields ?? [], { number: place.emergencyNumber ?? '', meetingPoint: place.meetingPlace ?? '', secondMeetingPoint: place.secondMeetingPlace ?? '', siteAddress: site.address, officerPhone: school.officerPhone ?? '' }),
    state: 'for signature', format: school.paper === 'A4' ? 'A4' : 'LETTER', language: school.locale, units: school.units,
    madeAt: now.toISOString(), madeOn: dayWords(now, style),
    school: { name: school.schoolName, address: school.schoolAddress, officerPhone: school.officerPhone },
    title: event.title, when: whenWords(event, style), until: calendarDayWords(calendarDay(event.endsAt, school.timeZone), style),
    site: {
      name: site.name, kind: site.kind, address: site.address, ...place,
      caretaker: site.keyHolder, caretakerPhone: site.keyHolderPhone, notes: site.notes, areas: site.areas.map((area) => areaFact(content, area)), describedBy: describedBy(full, style),
    },
    teams: event.teams, people: event.people, spectators: event.spectators, adults: event.adults.map(adultFact), schedule: event.schedule,
    assessment: rests === null ? null : assessmentFact(rests, restsForce(rests.version, calendarDay(now, school.timeZone)), style),
    checks: full.lines.map(checkFact),
    packs: packs.map((pack) => packFact(limits, pack, goesByAir(details), style)),
    totalWh: energies.reduce<number>((sum, one) => sum + (one ?? 0), 0), packsWithoutEnergy: energies.filter((one) => one === null).length,
    provides: venueConditions(full),
    brings: brought(full),
    ...detailsFacts(details, site),
  };
}

function adultFact({ name, parts, phone }: EventAdult): EventFacts['adults'][number] {
  return { name, phone, parts: parts.map((part) => labelOf(ADULT_PARTS, part) ?? part), mayStop: parts.includes('may-stop'), firstAid: parts.includes('first-aid') };
}

function checkFact({ id, group, state, words, accepted }: JudgedLine): EventFacts['checks'][number] {
  return { id, group: GROUP_TITLES[group], state: accepted === null ? state : 'accepted', words, accepted: accepted === null ? null : { reason: accepted.reason, by: accepted.byName } };
}

function brought({ content, event: { details } }: EventInFull): EventFacts['brings'] {
  const controls = TEAM_CONTROLS.filter((id) => details.brings.includes(id)).flatMap((id) => content.controls.filter((control) => control.id === id).map(({ title }) => agreement(id, title, true)));
  return details.bringsNote === null ? controls : [...controls, agreement('note', details.bringsNote, true)];
}

function describedBy({ links }: EventInFull, style: DateStyle): string | null {
  const last = links.filter(({ purpose, answeredAt }) => purpose === 'describe-venue' && answeredAt !== null).sort((one, other) => (other.answeredAt?.getTime() ?? 0) - (one.answeredAt?.getTime() ?? 0))[0];
  return last === undefined || last.answeredAt === null ? null : `${last.answeredByName ?? last.forWhom}, ${momentWords(last.answeredAt, style)}`;
}
