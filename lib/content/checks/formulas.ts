import type { Content } from '../model';
import { type ContentFault, idsOf, must } from './fault';

/** Units whose default is a word to be taken as it stands (amendment A46). */
const WORD_UNITS = ['word', 'text', 'light, ordinary or heavy'];
const FUNCTIONS = ['min', 'max', 'ceil'];

/** Every name in a formula must be an input, an exposure or one of the three functions. */
export function formulaFaults(content: Content): readonly ContentFault[] {
  const names = new Set([...idsOf(content.inputs), ...idsOf(content.exposures), ...FUNCTIONS]);
  const formulas = [
    ...content.exposures.map(({ id, formula }) => ({ id, formula })),
    ...content.inputs.flatMap(({ id, unit, default: value }) => (typeof value === 'string' && !WORD_UNITS.includes(unit) ? [{ id, formula: value }] : [])),
  ];
  return formulas.flatMap(({ id, formula }) =>
    (formula.match(/[A-Za-z]\w*/g) ?? []).flatMap((name) => must(names.has(name), `formula of ${id}`, `${name} is unknown`)));
}
