import { describe, expect, it } from 'vitest';
import { positionPlanned, positionToday, shareOfRow } from '@/lib/charts/matrix-positions';
import { riskMatrixScene } from '@/lib/charts/risk-matrix';
import type { CircleMark, RectMark, Scene } from '@/lib/charts/scene';
import type { ScoreResult } from '@/lib/core/result';
import type { MatrixChoice } from '@/lib/core/document';
import { touch } from '@/lib/charts/text-box';
import { boxOf, faultsOf, overlapsOf } from '@/tests/support/scene-facts';
import { scoreReference } from '@/tests/support/reference-venues';
import { results } from './venues';

const OWN: MatrixChoice = { title: 'Ours', from: [0, 0.005, 0.5, 3], words: ['hardly', 'seldom', 'often', 'always'], cells: [['low', 'low', 'low', 'moderate', 'moderate'], ['low', 'low', 'moderate', 'high', 'high'], ['low', 'moderate', 'high', 'high', 'extreme'], ['moderate', 'high', 'high', 'extreme', 'extreme']] };
const MATRICES: readonly MatrixChoice[] = ['five-by-five', 'mil-std-882e', 'three-by-three', OWN];
const all: readonly ScoreResult[] = [...results, ...MATRICES.map((matrix) => scoreReference('ordinary-classroom', 100, { matrix }))];

const discs = (scene: Scene): readonly CircleMark[] => scene.marks.filter((mark): mark is CircleMark => mark.kind === 'circle' && mark.role === 'disc');
const cells = (scene: Scene): readonly RectMark[] => scene.marks.filter((mark): mark is RectMark => mark.kind === 'rect' && mark.role.startsWith('cell-'));

describe.each(all.map((result) => [`${result.venue}, ${result.matrix.title}`, result] as const))('the matrix of %s', (_, result) => {
  const scene = riskMatrixScene(result);
  const signs = scene.marks.filter((mark) => mark.kind === 'text' && mark.role === 'on-ink');

  it('draws every cell with its fill and its mark', () => {
    expect(cells(scene)).toHaveLength(result.matrix.levels.length * 5);
    expect(scene.marks.filter((mark) => mark.kind === 'grade' && mark.on === 'cell')).toHaveLength(result.matrix.levels.length * 5);
  });

  it('puts every risk into the row of its level and the column of its class, or lists it', () => {
    const drawn = result.risks.filter((risk) => signs.some((sign) => sign.kind === 'text' && sign.text === String(risk.rank)));
    const counted = result.risks.filter((risk) => risk.grade !== 'not applicable');
    expect(drawn.length + scene.listed.length).toBe(counted.length);
    for (const risk of drawn) {
      const position = positionToday(result.matrix, risk);
      const sign = signs.find((mark) => mark.kind === 'text' && mark.text === String(risk.rank));
      const disc = discs(scene).find((mark) => sign?.kind === 'text' && mark.cx === sign.x && Math.abs(mark.cy + 4.8 - sign.y) < 0.02);
      const cell = cells(scene)[((position?.level ?? 0) - 1) * 5 + (position?.severity ?? 0) - 1];
      expect(cell?.role, risk.id).toBe(`cell-${risk.grade}`);
      expect(disc?.cx, risk.id).toBeGreaterThanOrEqual(cell?.x ?? Infinity);
      expect(disc?.cx, risk.id).toBeLessThanOrEqual((cell?.x ?? 0) + (cell?.width ?? 0));
      expect(disc?.cy, risk.id).toBeGreaterThanOrEqual((cell?.y ?? Infinity) - 1.8);
      expect(disc?.cy, risk.id).toBeLessThanOrEqual((cell?.y ?? 0) + (cell?.height ?? 0) + 1.8);
    }
  });

  it('gives each risk after the actions the grade that the engine gives it', () => {
    for (const risk of result.risks) expect(positionPlanned(result.matrix, risk)?.grade ?? 'not applicable', risk.id).toBe(risk.plannedGrade);
  });

  it('covers no disc, ring or grade mark with another', () => {
    const circles = scene.marks.filter((mark) => mark.kind === 'circle');
    const marks = scene.marks.filter((mark) => mark.kind === 'grade');
    circles.forEach((one, index) => {
      for (const other of circles.slice(index + 1)) expect(Math.hypot(one.cx - other.cx, one.cy - other.cy)).toBeGreaterThanOrEqual(one.r + other.r);
      for (const mark of marks) expect(one.role === 'disc' && touch(boxOf(one), boxOf(mark)) && near(one, mark.x, mark.y, mark.size)).toBe(false);
    });
  });

  it('stays inside and writes no word over another', () => {
    expect([...faultsOf(scene), ...overlapsOf(scene)]).toEqual([]);
  });
});

/** Whether a disc really reaches into a square, and not only its corner box. */
function near(disc: CircleMark, x: number, y: number, size: number): boolean {
  return Math.hypot(Math.max(x - disc.cx, 0, disc.cx - x - size), Math.max(y - disc.cy, 0, disc.cy - y - size)) < disc.r;
}

describe('the place in a row', () => {
  const { matrix } = all[0] as ScoreResult;

  it('rises with the frequency and stays between the bounds of the level', () => {
    const shares = [0.01, 0.02, 0.05, 0.0999].map((frequency) => shareOfRow(matrix, 3, frequency));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBe(0);
    expect(shares.at(-1)).toBeLessThan(1);
  });

  it('stands at the end when a frequency lies beyond the decade drawn of an open level', () => {
    expect(shareOfRow(matrix, 1, 1e-9)).toBe(0);
    expect(shareOfRow(matrix, 5, 500)).toBe(1);
  });
});
