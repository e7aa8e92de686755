import type { OwnMatrix } from '@/lib/core/document';
import { type DocumentFault, faultAt } from '../json/fault';

const GRADES = ['low', 'moderate', 'high', 'extreme'];
type Cell = OwnMatrix['cells'][number][number];

/**
 * A table of the school's own must have a word and a row for each level, rising levels from 0, and grades that
 * never fall with likelihood or with class: otherwise putting a control in place could make a risk look worse (A32).
 * @param matrix a table whose shape is right already
 */
export function ownMatrixFaults({ from, words, cells }: OwnMatrix): readonly DocumentFault[] {
  return [
    ...sameLength('words', words.length, from.length),
    ...sameLength('cells', cells.length, from.length),
    ...from.flatMap((bound, at) => risingFault(bound, from[at - 1], at)),
    ...cells.flatMap((row, level) => row.flatMap((grade, column) => [
      ...fallingFault(grade, row[column - 1], level, column, 'the class before it'),
      ...fallingFault(grade, cells[level - 1]?.[column], level, column, 'the rarer level'),
    ])),
  ];
}

function sameLength(part: string, length: number, levels: number): readonly DocumentFault[] {
  return length === levels ? [] : [faultAt(['matrix', part], `has ${length} entries`, `${levels}, one for each level in "from"`)];
}

function risingFault(bound: number, before: number | undefined, at: number): readonly DocumentFault[] {
  const path = ['matrix', 'from', at];
  if (before === undefined) return bound === 0 ? [] : [faultAt(path, `is ${bound}`, '0: the rarest level begins at never')];
  return bound > before ? [] : [faultAt(path, `is ${bound}, not above the level before it`, `a number above ${before}`)];
}

function fallingFault(grade: Cell, other: Cell | undefined, level: number, column: number, where: string): readonly DocumentFault[] {
  if (other === undefined || GRADES.indexOf(grade) >= GRADES.indexOf(other)) return [];
  return [faultAt(['matrix', 'cells', level, column], `is "${grade}", but ${where} has "${other}"`, `"${other}" or worse`)];
}
