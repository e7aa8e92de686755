import type { Content } from '../model';
import { controlsSetBy, inputsSetBy } from '../question-sets';
import { type ContentFault, must } from './fault';

/** Every control is set by exactly one question, so that the order of answers cannot matter; every input by one at least. */
export function reachFaults(content: Content): readonly ContentFault[] {
  const controls = content.controls.flatMap((control) => {
    const setters = content.questions.filter((question) => controlsSetBy(question).includes(control.id)).map((question) => question.id);
    const where = `control ${control.id}`;
    return [
      ...must(setters.length > 0, where, 'cannot be reached from any answer'),
      ...must(setters.length < 2, where, `is set by ${setters.join(' and ')}`),
    ];
  });
  const asked = new Set(content.questions.flatMap(inputsSetBy));
  const inputs = content.inputs.flatMap((input) => must(asked.has(input.id), `input ${input.id}`, 'cannot be reached from any answer'));
  return [...controls, ...inputs];
}
