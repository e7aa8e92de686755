import type { Content, GradeTable } from '../model';
import { type ContentFault, idFaults, kindFaults, must } from './fault';

const RISING = ['low', 'moderate', 'high', 'extreme'] as const;

/** Tables that an edition may hold: grades that fall where the risk rises, charge that falls with voltage, air without a middle. */
export function tableFaults({ tableMatrices = [], restVoltage, airClasses = [] }: Content): readonly ContentFault[] {
  const points = restVoltage?.points ?? [];
  return [
    ...idFaults('tableMatrices', tableMatrices),
    ...idFaults('airClasses', airClasses),
    ...tableMatrices.flatMap(gradeTableFaults),
    ...must(points.every((point, at) => { const next = points[at + 1]; return next === undefined || (point.volts < next.volts && point.charge < next.charge); }), 'restVoltage', 'must rise in both columns'),
    ...airClasses.flatMap(({ id, low, mid, high, kind }) => [
      ...must(low <= mid && mid <= high, `air class ${id}`, 'low, mid and high must rise'),
      ...kindFaults(kind, `air class ${id}`),
    ]),
  ];
}

function gradeTableFaults({ id, levels, cells, kind }: GradeTable): readonly ContentFault[] {
  const where = `matrix ${id}`;
  const ranks = cells.map((row) => row.map((grade) => RISING.indexOf(grade)));
  const rises = ranks.every((row, level) => row.every((rank, at) => rank >= (row[at - 1] ?? 0) && rank >= (ranks[level - 1]?.[at] ?? 0)));
  return [
    ...must(cells.length === levels.length && cells.every((row) => row.length === 5), where, 'needs a row for each level and five classes'),
    ...must(rises, where, 'a grade falls where the risk rises'),
    ...kindFaults(kind, where),
  ];
}
