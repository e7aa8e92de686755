import { placeholdersOf } from '../fill-guidance';
import type { Guidance, GuidanceText } from '../model';
import { type ContentFault, idFaults, idsOf, must } from './fault';

/** Guidance that names inputs, fields or texts nobody has, stands beside itself, or leaves a brace open. */
export function guidanceFaults({ fields, texts }: Guidance, inputs: readonly { readonly id: string }[]): readonly ContentFault[] {
  return [
    ...fields.flatMap(({ id, input }) => must(input === null || idsOf(inputs).has(input), `guidance field ${id}`, `input ${input} is unknown`)),
    ...idFaults('guidance', texts),
    ...idFaults('guidance fields', fields),
    ...texts.flatMap((text) => [...placeholderFaults(text, idsOf(fields)), ...besideFaults(text, idsOf(texts))]),
  ];
}

function placeholderFaults(text: GuidanceText, fields: ReadonlySet<string>): readonly ContentFault[] {
  const where = `guidance ${text.id}`;
  return text.lines.flatMap((line) => {
    const used = placeholdersOf(line);
    const braces = `${line.lead}${line.text ?? ''}`.match(/[{}]/g)?.length ?? 0;
    return [
      ...used.flatMap((field) => must(fields.has(field), where, `field {${field}} is unknown`)),
      ...must(braces === 2 * used.length, where, `a brace is open in "${line.lead}"`),
    ];
  });
}

function besideFaults(text: GuidanceText, texts: ReadonlySet<string>): readonly ContentFault[] {
  return text.neverBeside.flatMap((never) => ('guidance' in never
    ? must(texts.has(never.guidance) && never.guidance !== text.id, `guidance ${text.id}`, `never beside ${never.guidance}, which is unknown or itself`)
    : []));
}
