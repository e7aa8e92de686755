import type { Content, Control, InputMove } from '../model';
import { type ContentFault, must } from './fault';

/** Inputs that an action would move out of their range, or that do not exist or cannot be compared. */
export function moveFaults(content: Content): readonly ContentFault[] {
  return content.controls.flatMap((control) => (control.moves ?? []).flatMap((move) => oneMove(content, control, move)));
}

function oneMove(content: Content, control: Control, { input, to, only }: InputMove): readonly ContentFault[] {
  const where = `control ${control.id}`;
  const definition = content.inputs.find(({ id }) => id === input);
  if (definition === undefined) return [{ where, problem: `moves ${input}, which is unknown` }];
  const { min, max } = definition;
  const inside = typeof to === 'number' && to >= (min ?? -Infinity) && to <= (max ?? Infinity);
  return [
    ...must(inside || min === null, where, `moves ${input} out of its range`),
    ...must(only === 'always' || typeof to === 'number', where, `moves ${input} by comparing words`),
  ];
}
