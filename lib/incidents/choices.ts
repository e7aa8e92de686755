import type { Choice } from '@/lib/forms/choices';

/** What it was. Fire, smoke and injury come together, so several may be ticked. */
export const KINDS = [
  { id: 'swelling', label: 'A pack puffed up', hint: 'Nobody presses, charges or flies it. Everybody away from it.' },
  { id: 'heat', label: 'A pack got hot', hint: 'Is anything warm now? Then this form waits: everybody out, alarm, call.' },
  { id: 'smoke-or-venting', label: 'Smoke, hiss or venting', hint: 'Everybody who breathed smoke sees a doctor the same day, even if well.' },
  { id: 'fire', label: 'Fire or sparks', hint: 'Nobody goes in before the fire service, then the safety officer, says so.' },
  { id: 'short-circuit', label: 'Short circuit', hint: 'The pack may still vent later: everybody away from it.' },
  { id: 'impact', label: 'A hard hit', hint: 'A hit pack can vent at once, in an hour, or on its next charge.' },
  { id: 'smell-or-leak', label: 'A smell or a leak', hint: 'A sweet or sharp smell near packs is smoke: everybody out, alarm, call.' },
  { id: 'electric-shock', label: 'Electric shock', hint: 'Whoever had it sees a doctor, even if well.' },
  { id: 'drone-hit', label: 'Somebody was hit by a drone or rotor' },
  { id: 'injury', label: 'Somebody was hurt in another way' },
  { id: 'near-miss', label: 'It nearly happened', hint: 'Nothing and nobody was harmed.' },
] as const satisfies readonly Choice[];
export type Kind = (typeof KINDS)[number]['id'];

/** Who was called or warned at once. */
export const CALLED = [
  { id: 'fire-service', label: 'Fire service' },
  { id: 'ambulance', label: 'Ambulance' },
  { id: 'alarm', label: 'The building’s alarm was set off' },
  { id: 'nobody-needed', label: 'Nobody was needed' },
] as const satisfies readonly Choice[];

/** Who was told afterwards. */
export const CONTACTED = [
  { id: 'safety-officer', label: 'Safety officer' },
  { id: 'head', label: 'Head or office' },
  { id: 'caretaker', label: 'Caretaker or owner of the building' },
  { id: 'families', label: 'Families of those affected' },
  { id: 'doctor', label: 'Doctor' },
  { id: 'insurer', label: 'Insurer' },
  { id: 'authority', label: 'An authority' },
] as const satisfies readonly Choice[];

/** What was going on. Together with what it was this says which risk of the assessment it belongs to. */
export const DOINGS = [
  { id: 'charging', label: 'Charging, with somebody there' },
  { id: 'charging-unwatched', label: 'Charging, with nobody there' },
  { id: 'stored', label: 'Packs lay in the store' },
  { id: 'waiting', label: 'A damaged pack waited for collection' },
  { id: 'plugging', label: 'Plugging in, unplugging or handling' },
  { id: 'flying', label: 'Flying, or just after' },
  { id: 'travelling', label: 'In a vehicle or on the way' },
  { id: 'repairing', label: 'Repair or soldering' },
  { id: 'discarding', label: 'Throwing away or handing over' },
  { id: 'other', label: 'Something else' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];
export type Doing = (typeof DOINGS)[number]['id'];

/** Nothing of it is ever preselected. */
export const YES_NO = [
  { id: 'yes', label: 'Yes' },
  { id: 'no', label: 'No' },
  { id: 'not-sure', label: 'Not sure' },
] as const satisfies readonly Choice[];
export type YesNo = (typeof YES_NO)[number]['id'];

/** Of somebody affected; a role, never a name. */
export const AFFECTED_ROLES = [
  { id: 'student', label: 'Student' },
  { id: 'teacher', label: 'Teacher or coach' },
  { id: 'helper', label: 'Helper' },
  { id: 'visitor', label: 'Spectator or visitor' },
  { id: 'staff', label: 'Other staff' },
  { id: 'other', label: 'Somebody else' },
] as const satisfies readonly Choice[];
export type AffectedRole = (typeof AFFECTED_ROLES)[number]['id'];

/** `nearby`: it only lay beside; such a pack the officer may release later. */
export const PARTS = ['involved', 'nearby', 'not-sure'] as const;
