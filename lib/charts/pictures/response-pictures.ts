import { circle, path, rect } from '../marks';
import type { Mark, Scene } from '../scene';
import { arrow, FLOOR, house, peg, SIDE, sound, waves } from './shapes';

/** What is done at smoke, in its order. Drawings of our own: a card is read from across a room. */
export type ResponsePicture = 'everybody out' | 'shut the door' | 'raise the alarm' | 'call from outside' | 'meet and count';

/** A drawing of one step, without words: the step itself stands beside it. */
export function responsePicture(picture: ResponsePicture): Scene {
  return { width: SIDE, height: SIDE, title: TITLES[picture], marks: MARKS[picture]() };
}

const TITLES: Readonly<Record<ResponsePicture, string>> = {
  'everybody out': 'A person in an open door, and others on the way out.',
  'shut the door': 'A shut door with smoke behind it, and a person on the way out.',
  'raise the alarm': 'A call point on the wall that sounds.',
  'call from outside': 'A person outdoors telephones, away from a house with smoke.',
  'meet and count': 'Three people at a sign; the wind takes the smoke away from them.',
};

const floor = (): Mark => rect('ink', 0, FLOOR, SIDE, 4);

const MARKS: Readonly<Record<ResponsePicture, () => readonly Mark[]>> = {
  'everybody out': () => [floor(), rect('ink', 4, 14, 5, FLOOR - 14), rect('ink', 4, 14, 32, 5), rect('ink', 31, 14, 5, FLOOR - 14), ...peg(20, 50), arrow('ember', [42, 34], [92, 34], 11), ...peg(54, 40), ...peg(78, 40)],
  'shut the door': () => [floor(), ...waves('path', 10, 70, 2, 44), rect('ink', 28, 12, 36, FLOOR - 12), rect('paper', 33, 17, 26, FLOOR - 17), rect('ink', 36, 20, 20, FLOOR - 20), circle('paper', 51, 54, 3.5), ...peg(80, 44), arrow('ember', [68, 28], [94, 28], 9)],
  'raise the alarm': () => [rect('ink', 28, 24, 40, 48), rect('paper', 33, 29, 30, 38), circle('ember', 48, 48, 11), ...sound('path', 74, 48, 1), ...sound('path', 22, 48, -1)],
  'call from outside': () => [floor(), ...house(6, 30, 34), ...waves('path', 15, 32, 2, 24), ...peg(66, 56), rect('paper', 71, 34, 14, 24), rect('ember', 73, 36, 10, 20)],
  'meet and count': () => [floor(), rect('ink', 8, 16, 5, FLOOR - 16), circle('ink', 10.5, 16, 13), circle('paper', 10.5, 16, 9), circle('ink', 10.5, 16, 4.5), ...peg(32, 46), ...peg(52, 46), ...peg(72, 46), ...wind()],
};

/** Wind from the people towards where they came from. */
function wind(): readonly Mark[] {
  return [path('path', 'M30 14C40 8 46 20 56 14C62 10 66 12 70 14', 4), path('path', 'M36 28C46 22 52 34 62 28C68 24 72 26 76 28', 4), path('ink', 'M70 6L84 14L70 22Z'), path('ink', 'M76 20L90 28L76 36Z')];
}
