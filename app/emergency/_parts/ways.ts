/** A page of the emergency screens: the guidance text on it, and how the way to it is called. */
export interface Way {
  readonly path: `/emergency${string}`;
  readonly guidance: string;
  readonly name: string;
  readonly hint?: string;
}

/** The first screen: what to do at once. */
export const SMOKE: Way = { path: '/emergency', guidance: 'smoke', name: 'Smoke, hiss or flame: everybody out' };

/** Where one goes from there, in the order of need. */
export const WAYS: readonly Way[] = [
  { path: '/emergency/missing', guidance: 'somebody-missing', name: 'Somebody is missing' },
  { path: '/emergency/ill', guidance: 'first-aid', name: 'Somebody is ill or burned' },
  { path: '/emergency/hot', guidance: 'hot-no-smoke', name: 'Hot, hissing, smelly, wet or growing', hint: 'No smoke yet' },
  { path: '/emergency/puffed-up', guidance: 'swollen-cool', name: 'Puffed up, but cool and quiet', hint: 'Dry, without smell, not growing' },
  { path: '/emergency/smell', guidance: 'smell-no-fire', name: 'A strange smell or a headache', hint: 'No fire to be seen' },
  { path: '/emergency/vehicle', guidance: 'vehicle-smoke', name: 'Smoke in the vehicle' },
  { path: '/emergency/caller', guidance: 'caller', name: 'What to say on the telephone' },
  { path: '/emergency/record', guidance: 'recording', name: 'Nothing is hot now: record it', hint: 'Or: counted, alarm raised, fire service called' },
];

/** The way whose page has this last part of the address. */
export function wayOf(part: string): Way | undefined {
  return WAYS.find(({ path }) => path === `/emergency/${part}`);
}
