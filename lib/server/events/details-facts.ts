import 'server-only';
import { AIR_RULES } from '@/lib/events/air-rules';
import { CHARGING_THERE, DAMAGED_THERE, DETECTION_THERE, HALL_SHARED, labelOf, OVERNIGHT, SAID } from '@/lib/events/choices';
import { type EventDetails, goesByAir, goesByRoad } from '@/lib/events/details';
import type { EventFacts } from '@/lib/papers/event/facts';
import type { Area, Site } from '@/lib/places/place';

/** What the forms of an event ask, line by line in the words of its papers; what nobody said stays null. */
export function detailsFacts(details: EventDetails, site: Pick<Site, 'areas'>): Pick<EventFacts, 'venue' | 'charging' | 'damaged' | 'night' | 'travel'> {
  return {
    venue: [
      { id: 'alarm', name: 'The venue’s own alarm', value: details.alarm },
      { id: 'hall', name: 'Who shares the building', value: joined(labelOf(HALL_SHARED, details.hall), details.hallNote) },
      { id: 'detection', name: 'Smoke detection that day', value: joined(labelOf(DETECTION_THERE, details.detection), details.detectionNote) },
      { id: 'also', name: 'The venue also provides', value: details.providesNote },
    ],
    charging: charging(details, site),
    damaged: [
      { id: 'damaged', name: 'A pack that is damaged there', value: labelOf(DAMAGED_THERE, details.damaged) },
      { id: 'spot', name: 'The spot outdoors for suspect packs', value: details.damagedPlace ?? areaFor(site, 'isolation') },
    ],
    night: [{ id: 'night', name: 'Packs overnight', value: joined(labelOf(OVERNIGHT, details.night), details.nightPlace) }],
    travel: { byRoad: goesByRoad(details), byAir: goesByAir(details), road: road(details), air: air(details), airRules: AIR_RULES.map(({ rule, source, read }) => ({ rule, source, read })) },
  };
}

function charging(details: EventDetails, site: Pick<Site, 'areas'>): EventFacts['charging'] {
  const there = { id: 'charging', name: 'Charging there', value: labelOf(CHARGING_THERE, details.charging) };
  if (details.charging !== 'yes') return [there];
  return [
    there,
    { id: 'place', name: 'Where', value: details.chargingPlace ?? areaFor(site, 'charging') },
    { id: 'at-once', name: 'Packs at once, at most', value: numeral(details.chargingAtOnce) },
    { id: 'circuit', name: 'On which circuit', value: details.chargingCircuit },
  ];
}

function road(details: EventDetails): EventFacts['travel']['road'] {
  return [
    { id: 'vehicle', name: 'Vehicle', value: details.vehicle },
    { id: 'stops', name: 'Way and stops', value: details.stops },
    { id: 'case', name: 'Rigid padded case, each pack apart', value: labelOf(SAID, details.case) },
    { id: 'leads', name: 'Each lead covered', value: labelOf(SAID, details.leads) },
    { id: 'warm', name: 'Never left in a warm or parked vehicle', value: labelOf(SAID, details.neverWarm) },
    { id: 'apart', name: 'Apart from people, strapped down', value: labelOf(SAID, details.apart) },
    { id: 'plan', name: 'Driver and adults know what they do at smoke', value: labelOf(SAID, details.plan) },
    { id: 'two', name: 'Two people check every pack before it is loaded', value: labelOf(SAID, details.twoCheck) },
  ];
}

function air(details: EventDetails): EventFacts['travel']['air'] {
  return [
    { id: 'carrier', name: 'Carriers', value: details.carrier },
    { id: 'asked', name: 'Asked for their rules', value: labelOf(SAID, details.carrierAsked) },
    { id: 'cabin', name: 'All in the cabin, none in checked baggage', value: labelOf(SAID, details.cabinOnly) },
    { id: 'terminals', name: 'Contacts covered pack by pack', value: labelOf(SAID, details.terminals) },
    { id: 'tested', name: 'Test summary of the type (UN 38.3) at hand', value: labelOf(SAID, details.tested) },
    { id: 'approved', name: 'Approved in writing, above 100 Wh', value: joined(labelOf(SAID, details.approved), details.approvalNote) },
    { id: 'flyers', name: 'People who fly', value: numeral(details.flyers) },
  ];
}

const areaFor = ({ areas }: Pick<Site, 'areas'>, use: Area['use']): string | null => areas.find((area) => area.use === use)?.name ?? null;
const numeral = (count: number | null): string | null => (count === null ? null : String(count));
const joined = (word: string | null, note: string | null): string | null => (word === null ? note : note === null ? word : `${word}. ${note}`);
