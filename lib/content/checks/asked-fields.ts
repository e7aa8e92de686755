import type { Content, NumberField, Question, TickLine } from '../model';
import { type ContentFault, idsOf, must } from './fault';

type Of<Kind extends Question['kind']> = Extract<Question, { kind: Kind }>;

/** Fields asked in a way that does not suit their unit, and earlier ones that stand for fields of another question. */
export function numberFaults(content: Content, question: Of<'number'>, where: string): readonly ContentFault[] {
  const asked = new Set(question.fields.filter(({ earlier }) => earlier === undefined).map(({ input }) => input));
  return [
    ...must(asked.size > 0, where, 'asks for nothing'),
    ...question.fields.flatMap((field) => [
      ...rangeFaults(content, field, where),
      ...must(field.entry !== 'minutes and seconds' || field.unit === 's', where, `${field.input} is no time in seconds`),
      ...must(field.entry !== 'of ten' || (field.unit === 'share' && field.min === 0 && field.max === 1), where, `${field.input} is no share`),
      ...must(field.noMoreThan === undefined || (field.noMoreThan !== field.input && asked.has(field.noMoreThan)), where, `${field.input} is held to ${field.noMoreThan ?? ''}, which is not asked here`),
      ...(field.earlier?.replaces ?? []).flatMap((input) => must(asked.has(input), where, `${field.input} replaces ${input}, which is not asked here`)),
    ]),
  ];
}

/** A question may narrow the range of an input, never widen it. */
function rangeFaults(content: Content, field: NumberField, where: string): readonly ContentFault[] {
  const input = content.inputs.find(({ id }) => id === field.input);
  const inside = field.min < field.max && field.min >= (input?.min ?? -Infinity) && field.max <= (input?.max ?? Infinity);
  return must(inside, where, `range of ${field.input} is empty or wider than the input's own`);
}

/** Each line of ticks sets one control and no input, so that its four answers mean the same on every line. */
export function lineFaults(question: Of<'ticks'>, where: string): readonly ContentFault[] {
  return question.options.flatMap((line: TickLine) => {
    const states = Object.values(line.sets.controls);
    return [
      ...must(states.length === 1 && states[0] === 'in place', where, `line ${line.id} must put one control in place`),
      ...must(Object.keys(line.sets.inputs).length === 0, where, `line ${line.id} sets an input`),
    ];
  });
}

/** Options of an earlier edition alone would leave nothing to choose; values outside an input would break the calculation. */
export function choiceFaults(content: Content, question: Of<'choice'>, where: string): readonly ContentFault[] {
  const inputs = idsOf(content.inputs);
  return [
    ...must(question.options.filter(({ earlier }) => earlier !== true).length > 1, where, 'offers no choice'),
    ...question.options.flatMap((option) => Object.entries(option.sets.inputs).flatMap(([id, value]) => {
      const input = content.inputs.find((each) => each.id === id);
      const inside = typeof value !== 'number' || (value >= (input?.min ?? -Infinity) && value <= (input?.max ?? Infinity));
      return must(inside || !inputs.has(id), where, `option ${option.id} sets ${id} out of its range`);
    })),
  ];
}
