import { randomUUID } from 'node:crypto';
import { handOverEvent, signEvent } from '@/lib/db/events/sign-event';
import { beginEvent, changeAdults, changeDetails, changePacks } from '@/lib/db/events/write-event';
import { createArea, createSite } from '@/lib/db/places/write-sites';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import { openLines } from '@/lib/events/check/check-event';
import { TEAM_CONTROLS } from '@/lib/events/choices';
import type { EventDetails } from '@/lib/events/details';
import type { EventAdult, EventBasics } from '@/lib/events/event';
import { eventInFull } from '@/lib/server/events/gather';
import { eventFactsFor } from '@/lib/server/events/makings';
import { EVENT_PAPERS } from '@/lib/server/events/paper-kinds';
import { bothSigners } from '@/lib/server/papers/both-signers';
import { newDocumentNumber } from '@/lib/server/papers/document-number';
import { packPaper } from '@/lib/server/papers/paper-data';
import { makePaper } from '@/lib/server/papers/paper-desk';
import { printedFormat, readyToSign, signAs } from '@/lib/server/papers/sign-as';
import { later } from './calendar';
import { idOf } from './packs';
import { CONTENT_VERSION, done, type Entry, type World } from './world';

/** Days before today of the match at home, and until the cup elsewhere. */
const HOME_DAY = -26;
const CUP_DAY = 12;

const numbered = (from: number, count: number): readonly string[] => Array.from({ length: count }, (_one, index) => `W-${String(from + index).padStart(2, '0')}`);

/** A match in the own hall, signed by both and over; and a cup at another school that is being prepared, with some lines open. */
export function eventStory(world: World): readonly Entry[] {
  const { calendar } = world;
  const kept = { home: '' };
  return [
    { at: calendar.at(HOME_DAY - 2, '15:30'), what: 'a match at home', run: async (at) => { kept.home = await prepare(world, at, homeMatch(world)); await handOver(world, later(at, 40), kept.home); } },
    { at: calendar.at(HOME_DAY - 1, '11:15'), what: 'the match signed', run: (at) => sign(world, at, kept.home) },
    { at: calendar.at(-4, '13:00'), what: 'a cup elsewhere', run: async (at) => { await prepare(world, at, await cup(world, at)); } },
  ];
}

interface Prepared { readonly basics: EventBasics; readonly adults: readonly EventAdult[]; readonly details: Partial<EventDetails>; readonly labels: readonly string[] }

function homeMatch({ calendar, places }: World): Prepared {
  return {
    basics: { title: 'Friendly match in our hall', siteId: places.siteId, startsAt: calendar.at(HOME_DAY, '14:00'), endsAt: calendar.at(HOME_DAY, '17:00'), teams: 2, people: 12, spectators: 16, schedule: [{ time: '14:00', what: 'Briefing at the bench' }, { time: '14:30', what: 'Matches' }, { time: '16:30', what: 'Packs to storage charge, counted in' }] },
    adults: [
      { name: 'Tom Ashby', parts: ['leads', 'may-stop', 'charging'], phone: '555 0131' },
      { name: 'Joe Penrose', parts: ['first-aid', 'may-stop'], phone: '555 0132' },
    ],
    details: {
      alarm: 'Call point by the east door, bell in the whole building', detection: 'on', hall: 'told', hallNote: 'Choir in room 4 until 15:30', charging: 'yes', chargingPlace: 'Bench by the east door', chargingAtOnce: 4, chargingCircuit: 'breaker 7, nothing else on it',
      damaged: 'collector', damagedPlace: 'Outdoor spot, 5 m from the wall', night: 'no-night', brings: [...TEAM_CONTROLS.slice(0, 9)], way: 'none',
    },
    labels: numbered(1, 8).filter((label) => label !== 'W-07'),
  };
}

async function cup({ db, calendar, people }: World, at: Date): Promise<Prepared> {
  const { id: siteId } = done('the venue', await createSite(db, people['event-organiser'], at, { name: 'Mill Bridge sports centre', kind: 'away', address: '40 Mill Bridge, entrance from the car park', emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null, keyHolder: 'Duty manager', keyHolderPhone: '555 0144', notes: null }));
  done('its yard', await createArea(db, people['event-organiser'], later(at, 5), siteId, { use: 'isolation', name: 'Yard behind the hall', outdoors: true, lengthM: null, widthM: null, heightM: null, airMode: null, airChangesPerHour: null, airFlowM3PerH: null, openingWidthM: null, openingHeightM: null, openings: null, exits: null, surface: null, detectors: null, fuelLoad: null, peoplePresent: null, evacuationS: null, personDistanceM: null, combustibleDistanceM: null, clearHeightM: null, notes: null }));
  return {
    basics: { title: 'Mill Bridge cup', siteId, startsAt: calendar.at(CUP_DAY, '09:00'), endsAt: calendar.at(CUP_DAY, '17:30'), teams: 6, people: 18, spectators: 60, schedule: [{ time: '09:00', what: 'Doors open' }, { time: '10:00 to 12:30', what: 'First round' }, { time: '13:30 to 16:30', what: 'Second round' }] },
    adults: [{ name: 'Tom Ashby', parts: ['leads', 'drives'], phone: '555 0131' }, { name: 'Joe Penrose', parts: ['first-aid'], phone: '555 0132' }],
    details: { charging: 'no', damaged: 'collector', night: 'no-night', way: 'road', vehicle: 'School minibus, ten seats', case: 'yes', leads: 'yes', neverWarm: 'yes', apart: 'partly' },
    labels: [...numbered(1, 6), 'W-08'],
  };
}

async function prepare(world: World, at: Date, { basics, adults, details, labels }: Prepared): Promise<string> {
  const { db, people: { 'event-organiser': by } } = world;
  const { id: eventId } = done('an event', await beginEvent(db, by, at, basics, CONTENT_VERSION));
  done('its adults', await changeAdults(db, by, later(at, 5), { eventId, revision: 1 }, adults));
  done('its packs', await changePacks(db, by, later(at, 10), { eventId, revision: 2 }, () => Promise.resolve({ ok: true, value: labels.map((label) => idOf(world, label)) })));
  done('its details', await changeDetails(db, by, later(at, 25), { eventId, revision: 3 }, details));
  return eventId;
}

async function handOver({ db, people, password, address }: World, at: Date, eventId: string): Promise<void> {
  const by = people['event-organiser'];
  const officerId = people['safety-officer'].personId;
  const full = await eventInFull(by, eventId, at);
  if (full === null) throw new Error('the event is not there');
  const signers = done('who signs', await bothSigners(by, { preparedById: full.event.preparedById, officerId }));
  const [number, ready] = [newDocumentNumber(), await readyToSign(by, password, at)];
  const facts = await eventFactsFor(full, signers, number, (path) => Promise.resolve(`${address}${path}`));
  const paper = EVENT_PAPERS.event.make(facts);
  const made = await makePaper(paper, {});
  const { bytes, signature } = await signAs(ready, made, paper, 'Preparer', 'Prepared, and answers for what it says', at);
  const document = { id: randomUUID(), number, kind: 'event' as const, title: `${paper.title}: ${full.event.title}`, format: full.school.paper, language: full.school.locale, fingerprint: facts.fingerprint, of: { eventId }, bytes: [made, bytes] as const, data: packPaper(paper) };
  done('handing over', await handOverEvent(db, by, at, { eventId, revision: full.event.revision, officerId, versionId: full.rests?.version.id ?? null, document, signature }));
}

async function sign({ db, people, password }: World, at: Date, eventId: string): Promise<void> {
  const by = people['safety-officer'];
  const [full, file] = [await eventInFull(by, eventId, at), await waitingPaperOf(db, schoolScope(by), { kind: 'event', eventId })];
  const last = file?.revisions[0];
  if (full === null || file === null || last === undefined) throw new Error('no file waits for the officer');
  const open = openLines(full.lines).map(({ id, words }) => `${id}: ${words}`);
  const ready = await readyToSign(by, password, at);
  const { bytes, signature } = await signAs(ready, new Uint8Array(last.bytes), { format: printedFormat(file.format), language: file.language }, 'Officer', 'Checked, and agreed to', at);
  done('signing', await signEvent(db, by, at, { eventId, revision: full.event.revision, openLines: open, signature, file: { documentId: file.id, number: file.number, before: file.revision, bytes } }));
}
