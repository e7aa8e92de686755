import { circle, path, rect } from '../marks';
import type { FillRole, LineRole, Mark } from '../scene';

/** Side of every picture: large enough that what is in it is told apart across a room. */
export const SIDE = 96;

/** Bottom of the floor that people and houses stand on. */
export const FLOOR = 86;

/** A person as a peg: head and body. @param x its middle; @param height of head and body together */
export function peg(x: number, height: number, role: FillRole = 'ink', floor = FLOOR): readonly Mark[] {
  const head = height * 0.2;
  const top = floor - height + 2 * head + height * 0.05;
  const [wide, slim] = [height * 0.26, height * 0.15];
  return [
    circle(role, x, floor - height + head, head),
    path(role, `M${at(x - slim)} ${at(top)}L${at(x + slim)} ${at(top)}L${at(x + wide)} ${at(floor)}L${at(x - wide)} ${at(floor)}Z`),
  ];
}

/** An arrow with a shaft, from one point to another. */
export function arrow(role: FillRole, from: readonly [number, number], to: readonly [number, number], thick = 8): Mark {
  const [x1, y1] = from;
  const [x2, y2] = to;
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const [nx, ny] = [-uy, ux];
  const neck = length - thick * 1.5;
  const point = (along: number, aside: number): string => `${at(x1 + ux * along + nx * aside)} ${at(y1 + uy * along + ny * aside)}`;
  const half = thick / 2;
  return path(role, `M${point(0, half)}L${point(neck, half)}L${point(neck, thick * 1.25)}L${point(length, 0)}L${point(neck, -thick * 1.25)}L${point(neck, -half)}L${point(0, -half)}Z`);
}

/** Smoke that rises: waves one beside the other. @param x of the first; @param y where they begin, below */
export function waves(role: LineRole, x: number, y: number, count: number, height = 26): readonly Mark[] {
  const third = height / 2;
  return Array.from({ length: count }, (_, index) => {
    const left = x + index * 11;
    return path(role, `M${at(left)} ${at(y)}C${at(left - 8)} ${at(y - third * 0.6)} ${at(left + 8)} ${at(y - third * 0.6)} ${at(left)} ${at(y - third)}C${at(left - 8)} ${at(y - third * 1.6)} ${at(left + 8)} ${at(y - third * 1.6)} ${at(left)} ${at(y - height)}`, 4);
  });
}

/** A house with its roof, seen from outside. @param x of its left wall */
export function house(x: number, width: number, height: number): readonly Mark[] {
  const eaves = FLOOR - height;
  return [
    rect('ink', x, eaves, width, height),
    path('ink', `M${at(x - 6)} ${at(eaves + 1)}L${at(x + width / 2)} ${at(eaves - height * 0.5)}L${at(x + width + 6)} ${at(eaves + 1)}Z`),
    rect('paper', x + width / 2 - 6, FLOOR - 20, 12, 20),
  ];
}

/** Sound of a voice or a bell: strokes that spread. @param side 1 to the right, −1 to the left */
export function sound(role: LineRole, x: number, y: number, side: 1 | -1): readonly Mark[] {
  const stroke = (dx: number, dy: number, length: number): Mark => {
    const size = Math.hypot(dx, dy);
    return path(role, `M${at(x)} ${at(y + dy * 0.9)}L${at(x + (side * dx * length) / size)} ${at(y + dy * 0.9 + (dy * length) / size)}`, 5);
  };
  return [stroke(10, -9, 15), stroke(10, 0, 17), stroke(10, 9, 15)];
}

const at = (value: number): string => String(Math.round(value * 10) / 10);
