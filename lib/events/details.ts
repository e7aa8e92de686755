import { z } from 'zod';
import { CHARGING_THERE, DAMAGED_THERE, DETECTION_THERE, HALL_SHARED, idsOf, OVERNIGHT, SAID, TRAVEL_WAYS, VENUE_CHARGING_CONTROLS, VENUE_CONTROLS } from './choices';

const text = z.string().nullable().default(null);
const said = z.enum(idsOf(SAID)).nullable().default(null);
const count = z.int().min(0).nullable().default(null);

/** What the venue is like on that day. What nobody knows is null, and never passes the check. */
const VENUE_FIELDS = {
  alarm: text,
  detection: z.enum(idsOf(DETECTION_THERE)).nullable().default(null),
  detectionNote: text,
  hall: z.enum(idsOf(HALL_SHARED)).nullable().default(null),
  hallNote: text,
  charging: z.enum(idsOf(CHARGING_THERE)).nullable().default(null),
  chargingPlace: text,
  chargingAtOnce: count,
  chargingCircuit: text,
  damaged: z.enum(idsOf(DAMAGED_THERE)).nullable().default(null),
  damagedPlace: text,
  night: z.enum(idsOf(OVERNIGHT)).nullable().default(null),
  nightPlace: text,
  /** ids of controls the venue has agreed to */
  agreed: z.array(z.string()).default([]),
  providesNote: text,
  /** ids of controls the team brings */
  brings: z.array(z.string()).default([]),
  bringsNote: text,
};

/** How packs get there. */
const TRAVEL_FIELDS = {
  way: z.enum(idsOf(TRAVEL_WAYS)).nullable().default(null),
  vehicle: text,
  stops: text,
  case: said,
  leads: said,
  neverWarm: said,
  apart: said,
  plan: said,
  twoCheck: said,
  carrier: text,
  carrierAsked: said,
  cabinOnly: said,
  terminals: said,
  tested: said,
  approved: said,
  approvalNote: text,
  flyers: count,
};

/** What an event's own forms ask, as it is kept. */
export const EventDetailsSchema = z.object({ ...VENUE_FIELDS, ...TRAVEL_FIELDS });
export type EventDetails = z.output<typeof EventDetailsSchema>;
export type VenueDetails = Pick<EventDetails, keyof typeof VENUE_FIELDS>;

/** Nothing is known yet. */
export const NO_DETAILS: EventDetails = EventDetailsSchema.parse({});

/** One line of the day: when, and what. */
export const ScheduleSchema = z.array(z.object({ time: z.string(), what: z.string() }));
export type Schedule = z.output<typeof ScheduleSchema>;

/** Controls that are asked of the venue: more, where packs are charged there. */
export function venueControls({ charging }: Pick<EventDetails, 'charging'>): readonly string[] {
  return charging === 'yes' ? [...VENUE_CONTROLS, ...VENUE_CHARGING_CONTROLS] : VENUE_CONTROLS;
}

export const goesByRoad = ({ way }: Pick<EventDetails, 'way'>): boolean => way === 'road' || way === 'road-and-air';
export const goesByAir = ({ way }: Pick<EventDetails, 'way'>): boolean => way === 'air' || way === 'road-and-air';
