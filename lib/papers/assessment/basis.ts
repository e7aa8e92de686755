import { heading, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** What the figures rest on and what they do not say. */
export function basisSection({ result, content, edition, retention }: AssessmentFacts): PaperSection {
  return { id: 'basis', title: 'What the figures rest on', ownPage: true, blocks: [
    text('A screening aid. Rates, failures and reaches are our judgement unless a source stands beside them; smoke is taken as mixed with the air of the room; soot and other gases are not counted; all of it is uncertain by factors, which the ranges show. Numbers rank, they do not permit.'),
    { kind: 'facts', rows: [
      { name: 'Content', value: `edition ${edition}, version ${content.version}` },
      { name: 'Calculation', value: `engine ${result.engineVersion}, ${result.draws} draws, seed ${result.seed}` },
      { name: 'Fingerprint of what was worked out', value: result.inputHash },
    ] },
    { kind: 'table', caption: 'What most widens the result', columns: [{ head: 'What', width: 5 }, { head: 'If', width: 3 }, { head: 'Harm, low to high', width: 3 }], rows: result.doubt.slice(0, 12).map((one) => [one.title, one.between, `${short(one.harmLow)} to ${short(one.harmHigh)}`]), empty: 'Nothing does.' },
    heading('Assumptions and sources'),
    { kind: 'table', caption: 'Figures', columns: [{ head: 'What', width: 4 }, { head: 'Value', width: 2 }, { head: 'Kind, source', width: 6 }], rows: result.assumptions.map((one) => [one.what, `${typeof one.value === 'number' ? short(one.value) : one.value} ${one.unit}`.trim(), { text: one.kind, under: one.source }]), empty: '' },
    heading('People’s data'),
    text(retention),
  ] };
}

const short = (value: number): string => String(Number(value.toPrecision(3)));
