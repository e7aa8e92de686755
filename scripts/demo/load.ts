import type { Db } from '@/lib/db/client';
import { assessmentStory } from './assessment-story';
import { calendarOf } from './calendar';
import { eventStory } from './event-story';
import { incidentStory } from './incident-story';
import { makePeople, SCHOOL } from './people';
import { makePlaces } from './places';
import { collected, registerStory } from './register-story';
import { sessionDays, sessionStory } from './session-story';
import { inOrderOfTime, type World } from './world';

export interface DemoSettings {
  readonly db: Db;
  /** YYYY-MM-DD; the same day gives the same story */
  readonly today: string;
  readonly password: string;
  readonly address: string;
}

/** Sessions from the last, after which the first dented pack was collected. */
const COLLECTED_AFTER_DAYS = 4;

/** Tells a season of a school of our own invention, through the use cases that people use. */
export async function loadDemo({ db, today, password, address }: DemoSettings): Promise<void> {
  const calendar = calendarOf(today, SCHOOL.timeZone);
  const people = await makePeople(db, calendar, password);
  const places = await makePlaces(db, people.organiser, calendar);
  const world: World = { db, calendar, password, address, people, places, packs: new Map() };
  const days = sessionDays(world);
  const dented = days.at(-16);
  await inOrderOfTime([
    ...registerStory(world), ...sessionStory(world), ...incidentStory(world), ...assessmentStory(world), ...eventStory(world),
    ...(dented === undefined ? [] : [collected(world, dented + COLLECTED_AFTER_DAYS, 'W-11')]),
  ]);
}
