import type { Choice } from '@/lib/forms/choices';

/** What an adult does there. One person may do several. */
export const ADULT_PARTS = [
  { id: 'leads', label: 'Leads the team' },
  { id: 'may-stop', label: 'May stop the match' },
  { id: 'first-aid', label: 'First aid' },
  { id: 'drives', label: 'Drives' },
  { id: 'charging', label: 'Stays with charging packs' },
  { id: 'venue', label: 'Contact at the venue' },
] as const satisfies readonly Choice[];
export type AdultPart = (typeof ADULT_PARTS)[number]['id'];

/** To things that are done or not. */
export const SAID = [
  { id: 'yes', label: 'Yes' },
  { id: 'partly', label: 'Partly' },
  { id: 'no', label: 'No' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];
export type Said = (typeof SAID)[number]['id'];

export const TRAVEL_WAYS = [
  { id: 'none', label: 'Nobody travels: it is here' },
  { id: 'road', label: 'By road' },
  { id: 'air', label: 'By air' },
  { id: 'road-and-air', label: 'By road and by air' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

export const CHARGING_THERE = [
  { id: 'no', label: 'No, nothing is charged there' },
  { id: 'yes', label: 'Yes' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

export const DETECTION_THERE = [
  { id: 'on', label: 'On all the time' },
  { id: 'off', label: 'Covered or off for a time', hint: 'For a haze machine, dust or a show. Say in the notes who turns it off and on again.' },
  { id: 'none', label: 'There is none' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

export const HALL_SHARED = [
  { id: 'nobody', label: 'Nobody else is in the building' },
  { id: 'told', label: 'Others are there, and they were told', hint: 'That packs are here, and that they leave at the alarm' },
  { id: 'not-told', label: 'Others are there, and nobody has told them yet' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

export const DAMAGED_THERE = [
  { id: 'venue-spot', label: 'It stays at the venue’s outdoor spot until its collection' },
  { id: 'collector', label: 'It leaves as the collector says' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

export const OVERNIGHT = [
  { id: 'no-night', label: 'No night: back in our own store the same day' },
  { id: 'venue', label: 'In the venue’s locked store' },
  { id: 'sleeping', label: 'In a hotel or at somebody’s home' },
  { id: 'vehicle', label: 'In a vehicle' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];

/** Controls of the content that a venue has in its hands; their titles are the words of the form and of the file. */
export const VENUE_CONTROLS: readonly string[] = ['exits-clear', 'building-alarm', 'alarm-means', 'hall-told', 'outdoor-spot', 'smoke-outlet', 'spectator-line', 'evac-help', 'store-locked'];
/** Of the venue too, but only where packs are charged there. */
export const VENUE_CHARGING_CONTROLS: readonly string[] = ['smoke-alarm-charging', 'circuit-guard', 'charge-off-exit', 'barrier-charging'];
/** What the team brings or sees to itself. */
export const TEAM_CONTROLS: readonly string[] = ['adult-present', 'pre-charge-check', 'crash-watch', 'first-aid', 'response-card', 'response-drill', 'arena-net', 'arm-rule', 'eye-protection', 'pack-count', 'carry-case', 'travel-box', 'sand-container', 'sensitive-away', 'attended-charging', 'balance-charger', 'surface-charging', 'no-parallel'];
