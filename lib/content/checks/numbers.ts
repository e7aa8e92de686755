import type { Content, ProductMatrix } from '../model';
import { type ContentFault, idFaults, kindFaults, must } from './fault';

/** Physics and constants whose middle lies outside their own range. */
export function physicsFaults(content: Content): readonly ContentFault[] {
  return [
    ...content.physics.flatMap(({ id, low, mid, high, kind }) => [
      ...must(low <= mid && mid <= high, `physics ${id}`, 'low, mid and high must rise'),
      ...kindFaults(kind, `physics ${id}`),
    ]),
    ...content.constants.flatMap(({ id, low, value, high, kind }) => [
      ...must(low <= value && value <= high, `constant ${id}`, 'must lie between low and high'),
      ...kindFaults(kind, `constant ${id}`),
    ]),
    ...aeglFaults(content),
  ];
}

/** A dose that is borne for longer must be smaller. */
function aeglFaults({ aegl }: Content): readonly ContentFault[] {
  const levels = [...Object.entries(aegl.HF).map(([level, row]) => ({ where: `aegl HF ${level}`, row })),
    ...Object.entries(aegl.CO).map(([level, row]) => ({ where: `aegl CO ${level}`, row }))];
  return levels.flatMap(({ where, row }) => [
    ...must(row.length === aegl.durationsMin.length, where, 'one value for each duration'),
    ...must(row.every((value, at) => value <= (row[at - 1] ?? Infinity)), where, 'must not rise with duration'),
  ]);
}

/** Rules of the pack check that a school could set looser than the trade. */
export function packLimitFaults({ packLimits }: Content): readonly ContentFault[] {
  return [...idFaults('packLimits', packLimits.rules), ...packLimits.rules.flatMap((rule) => {
    const where = `pack rule ${rule.id}`;
    const { value, schoolMay } = rule;
    const inside = schoolMay === undefined || (typeof value === 'number' && schoolMay.min <= value && value <= schoolMay.max);
    return [
      ...must(packLimits.order.includes(rule.verdict), where, `verdict ${rule.verdict} has no place in the order`),
      ...must(inside, where, 'value outside what a school may set'),
      ...kindFaults(rule.kind, where),
    ];
  })];
}

/** Likelihood bands with a gap, and scores without exactly one grade. */
export function matrixFaults(content: Content): readonly ContentFault[] {
  return content.matrices.flatMap((matrix) => [...bandFaults(matrix), ...scoreFaults(matrix), ...kindFaults(matrix.kind, `matrix ${matrix.id}`)]);
}

function bandFaults({ id, likelihood }: ProductMatrix): readonly ContentFault[] {
  return likelihood.flatMap((band, at) => {
    const next = likelihood[at + 1];
    return must(next === undefined ? band.to === null : band.to === next.from, `matrix ${id}`, `likelihood level ${band.level} leaves a gap above it`);
  });
}

/** Every product of a level and a class must have exactly one grade. */
function scoreFaults({ id, likelihood, severity, grades }: ProductMatrix): readonly ContentFault[] {
  const scores = new Set(likelihood.flatMap(({ level }) => severity.map((severityClass) => level * severityClass)));
  return [...scores].flatMap((score) =>
    must(grades.filter(({ from, to }) => from <= score && score <= to).length === 1, `matrix ${id}`, `score ${score} has no grade or more than one`));
}
