/**
 * Who works in the demo school; all of it invented. The addresses end in a name that no mail ever reaches (RFC 2606).
 * @typedef {'safety-officer' | 'organiser' | 'event-organiser' | 'helper'} DemoRole
 * @typedef {{ role: DemoRole, name: string, post: string, email: string }} DemoPerson
 * @type {readonly DemoPerson[]}
 */
export const DEMO_PEOPLE = [
  { role: 'safety-officer', name: 'Ines Holloway', post: 'Deputy head', email: 'ines@alderquay.example' },
  { role: 'organiser', name: 'Tom Ashby', post: 'Teacher of technology', email: 'tom@alderquay.example' },
  { role: 'event-organiser', name: 'Mara Lindqvist', post: 'School office', email: 'mara@alderquay.example' },
  { role: 'helper', name: 'Joe Penrose', post: 'Assistant coach', email: 'joe@alderquay.example' },
];
