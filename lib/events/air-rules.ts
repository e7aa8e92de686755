/** A rule of carriage by air that the check holds packs to, with what it rests on. */
export interface AirRule { readonly id: string; readonly rule: string; readonly source: string; readonly read: 'read' | 'a copy was read' | 'from memory' }

/** REFERENCES F.2, collected 25 November 2026. Rules change, and an airline may ask for more: the carrier is asked each time. */
export const AIR_RULES: readonly AirRule[] = [
  { id: 'carry-on', rule: 'Spare packs up to 100 Wh: in the cabin only, never in checked baggage.', source: 'TSA, “Lithium batteries with 100 watt hours or less in a device”, as on 25 November 2026', read: 'read' },
  { id: 'approval', rule: 'From 100 to 160 Wh: only with the airline’s approval, at most two spares a person.', source: 'FAA PackSafe', read: 'a copy was read' },
  { id: 'forbidden', rule: 'Above 160 Wh: not in baggage at all.', source: 'ICAO Technical Instructions 8;1, IATA Dangerous Goods Regulations 2.3', read: 'from memory' },
  { id: 'terminals', rule: 'Each spare is protected by itself: retail packing, tape over the contacts, or a bag or pouch of its own.', source: 'FAA PackSafe; 49 CFR 175.10(a)(18)(i)–(ii) itself from memory', read: 'a copy was read' },
  { id: 'tested', rule: 'The type has passed the tests of UN 38.3.', source: '49 CFR 175.10(a)(18)', read: 'from memory' },
  { id: 'gate', rule: 'When a cabin bag is taken at the gate, spares come out of it and stay with the passenger.', source: 'FAA PackSafe', read: 'a copy was read' },
  { id: 'damaged', rule: 'Damaged or recalled packs are not carried.', source: 'FAA PackSafe (summary read)', read: 'a copy was read' },
];
