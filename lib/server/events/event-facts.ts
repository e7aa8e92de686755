import 'server-only';
import { forceOn } from '@/lib/assessments/covers';
import { guidanceWords } from '@/lib/content/fill-guidance';
import { ADULT_PARTS, CHARGING_THERE, DAMAGED_THERE, DETECTION_THERE, HALL_SHARED, labelOf, OVERNIGHT, SAID, TEAM_CONTROLS, VENUE_CHARGING_CONTROLS, VENUE_CONTROLS } from '@/lib/events/choices';
import { AIR_RULES } from '@/lib/events/air-rules';
import type { JudgedLine } from '@/lib/events/check/check-event';
import { GROUP_TITLES } from '@/lib/events/check/line';
import { goesByAir, goesByRoad } from '@/lib/events/details';
import type { EventAdult } from '@/lib/events/event';
import type { Signer } from '@/lib/papers/assessment/facts';
import type { EventFacts } from '@/lib/papers/event/facts';
import { calendarDay, calendarDayWords, dayWords, type DateStyle, momentWords } from '@/lib/wording/dates';
import { areaFact } from './area-fact';
import { assessmentFact } from './assessment-fact';
import type { EventInFull } from './event-in-full';
import { packFact } from './pack-fact';
import { whenWords } from './when-words';
import { energyOf } from './check-facts';

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
  const own = site.kind === 'own';
  const place = {
    number: site.emergencyNumber ?? (own ? school.emergencyNumber : null), meeting: site.meetingPlace ?? (own ? school.meetingPlace : null),
    second: site.secondMeetingPlace ?? (own ? school.secondMeetingPlace : null),
  };
  const energies = packs.map((pack) => energyOf(limits, pack));
  return {
    ...makings, content,
    guidance: guidanceWords(content.guidance?.fields ?? [], { number: place.number ?? '', meetingPoint: place.meeting ?? '', secondMeetingPoint: place.second ?? '', siteAddress: site.address, officerPhone: school.officerPhone ?? '' }),
    state: 'for signature', format: school.paper === 'A4' ? 'A4' : 'LETTER', language: school.locale, units: school.units,
    madeAt: now.toISOString(), madeOn: dayWords(now, style),
    school: { name: school.schoolName, address: school.schoolAddress, officerPhone: school.officerPhone },
    title: event.title, when: whenWords(event, style), until: calendarDayWords(calendarDay(event.endsAt, school.timeZone), style),
    site: {
      name: site.name, kind: site.kind, address: site.address, emergencyNumber: place.number, meetingPlace: place.meeting, secondMeetingPlace: place.second,
      caretaker: site.keyHolder, caretakerPhone: site.keyHolderPhone, notes: site.notes, areas: site.areas.map((area) => areaFact(content, area)), describedBy: describedBy(full, style),
    },
    teams: event.teams, people: event.people, spectators: event.spectators, adults: event.adults.map(adultFact), schedule: event.schedule,
    assessment: rests === null ? null : assessmentFact(rests, forceToday(full), style),
    checks: full.lines.map(checkFact),
    packs: packs.map((pack) => packFact(limits, pack, goesByAir(details), style)),
    totalWh: energies.reduce<number>((sum, one) => sum + (one ?? 0), 0), packsWithoutEnergy: energies.filter((one) => one === null).length,
    venue: [
      { id: 'alarm', name: 'The venue’s own alarm', value: details.alarm },
      { id: 'hall', name: 'Who shares the building', value: joined(labelOf(HALL_SHARED, details.hall), details.hallNote) },
      { id: 'detection', name: 'Smoke detection that day', value: joined(labelOf(DETECTION_THERE, details.detection), details.detectionNote) },
      { id: 'also', name: 'The venue also provides', value: details.providesNote },
    ],
    provides: conditions(full, [...VENUE_CONTROLS, ...(details.charging === 'yes' ? VENUE_CHARGING_CONTROLS : [])], details.agreed),
    brings: [...conditions(full, TEAM_CONTROLS.filter((id) => details.brings.includes(id)), details.brings), ...(details.bringsNote === null ? [] : [{ id: 'note', words: details.bringsNote, agreed: true }])],
    charging: details.charging === 'yes' ? [
      { id: 'charging', name: 'Charging there', value: 'Yes' },
      { id: 'place', name: 'Where', value: details.chargingPlace ?? site.areas.find(({ use }) => use === 'charging')?.name ?? null },
      { id: 'at-once', name: 'Packs at once, at most', value: details.chargingAtOnce === null ? null : String(details.chargingAtOnce) },
      { id: 'circuit', name: 'On which circuit', value: details.chargingCircuit },
    ] : [{ id: 'charging', name: 'Charging there', value: labelOf(CHARGING_THERE, details.charging) }],
    damaged: [
      { id: 'damaged', name: 'A pack that is damaged there', value: labelOf(DAMAGED_THERE, details.damaged) },
      { id: 'spot', name: 'The spot outdoors for suspect packs', value: details.damagedPlace ?? site.areas.find(({ use }) => use === 'isolation')?.name ?? null },
    ],
    night: [{ id: 'night', name: 'Packs overnight', value: joined(labelOf(OVERNIGHT, details.night), details.nightPlace) }],
    travel: {
      byRoad: goesByRoad(details), byAir: goesByAir(details),
      road: [
        { id: 'vehicle', name: 'Vehicle', value: details.vehicle },
        { id: 'stops', name: 'Way and stops', value: details.stops },
        { id: 'case', name: 'Rigid padded case, each pack apart', value: labelOf(SAID, details.case) },
        { id: 'leads', name: 'Each lead covered', value: labelOf(SAID, details.leads) },
        { id: 'warm', name: 'Never left in a warm or parked vehicle', value: labelOf(SAID, details.neverWarm) },
        { id: 'apart', name: 'Apart from people, strapped down', value: labelOf(SAID, details.apart) },
        { id: 'plan', name: 'Driver and adults know what they do at smoke', value: labelOf(SAID, details.plan) },
        { id: 'two', name: 'Two people check every pack before it is loaded', value: labelOf(SAID, details.twoCheck) },
      ],
      air: [
        { id: 'carrier', name: 'Carriers', value: details.carrier },
        { id: 'asked', name: 'Asked for their rules', value: labelOf(SAID, details.carrierAsked) },
        { id: 'cabin', name: 'All in the cabin, none in checked baggage', value: labelOf(SAID, details.cabinOnly) },
        { id: 'terminals', name: 'Contacts covered pack by pack', value: labelOf(SAID, details.terminals) },
        { id: 'tested', name: 'Test summary of the type (UN 38.3) at hand', value: labelOf(SAID, details.tested) },
        { id: 'approved', name: 'Approved in writing, above 100 Wh', value: joined(labelOf(SAID, details.approved), details.approvalNote) },
        { id: 'flyers', name: 'People who fly', value: details.flyers === null ? null : String(details.flyers) },
      ],
      airRules: AIR_RULES.map(({ rule, source, read }) => ({ rule, source, read })),
    },
  };
}

const joined = (word: string | null, note: string | null): string | null => (word === null ? note : note === null ? word : `${word}. ${note}`);

function adultFact({ name, parts, phone }: EventAdult): EventFacts['adults'][number] {
  return { name, phone, parts: parts.map((part) => labelOf(ADULT_PARTS, part) ?? part), mayStop: parts.includes('may-stop'), firstAid: parts.includes('first-aid') };
}

function checkFact({ id, group, state, words, accepted }: JudgedLine): EventFacts['checks'][number] {
  return { id, group: GROUP_TITLES[group], state: accepted === null ? state : 'accepted', words, accepted: accepted === null ? null : { reason: accepted.reason, by: accepted.byName } };
}

function conditions({ content }: EventInFull, ids: readonly string[], agreed: readonly string[]): EventFacts['provides'] {
  return ids.flatMap((id) => content.controls.filter((control) => control.id === id).map(({ title }) => ({ id, words: title, agreed: agreed.includes(id) })));
}

function describedBy({ links }: EventInFull, style: DateStyle): string | null {
  const last = links.filter(({ purpose, answeredAt }) => purpose === 'describe-venue' && answeredAt !== null).sort((one, other) => (other.answeredAt?.getTime() ?? 0) - (one.answeredAt?.getTime() ?? 0))[0];
  return last === undefined || last.answeredAt === null ? null : `${last.answeredByName ?? last.forWhom}, ${momentWords(last.answeredAt, style)}`;
}

function forceToday({ rests, now, school }: EventInFull): string {
  if (rests === null) return 'none';
  const { version } = rests;
  const noon = (day: string): Date => new Date(`${day}T12:00:00Z`);
  return forceOn(noon(calendarDay(now, school.timeZone)), { state: version.state, suspended: version.suspensions.length > 0, validUntil: version.reviewBy === null ? null : noon(version.reviewBy), reviewAsked: version.reviewRequests.length > 0 });
}
