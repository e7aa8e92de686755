import type { Grade } from '@/lib/content/model';

/**
 * Risk matrices given as tables of grades. Both keep the likelihood levels in events per season, because
 * everything else here is per season; MIL-STD-882E's own bounds are per life of an item, so only its
 * words and its table are published, the bounds are our judgement (amendment A24).
 */

export interface TableMatrix {
  readonly id: 'mil-std-882e' | 'three-by-three';
  readonly title: string;
  /** the matrix's own word for each of the four grades */
  readonly gradeWords: Readonly<Record<Grade, string>>;
  readonly levels: readonly { readonly level: number; readonly word: string; readonly from: number; readonly to: number | null; readonly onceIn: string }[];
  /** cells[level − 1][severity class − 1], level 1 the rarest, class 1 the mildest */
  readonly cells: readonly (readonly Grade[])[];
  readonly kind: string;
  readonly source: string;
}

/**
 * Severity category of MIL-STD-882E for a severity class of ours: 5 catastrophic (1), 4 critical (2),
 * 3 marginal (3), 2 and 1 negligible (4). The correspondence is our judgement.
 */
const MIL_STD_CATEGORY: readonly [4, 4, 3, 2, 1] = [4, 4, 3, 2, 1];

/** Table III by level (A frequent to F eliminated) and category 1 to 4. */
export const MIL_STD_TABLE_III = {
  A: ['High', 'High', 'Serious', 'Medium'],
  B: ['High', 'High', 'Serious', 'Medium'],
  C: ['High', 'Serious', 'Medium', 'Low'],
  D: ['Serious', 'Medium', 'Medium', 'Low'],
  E: ['Medium', 'Medium', 'Medium', 'Low'],
  F: ['Eliminated', 'Eliminated', 'Eliminated', 'Eliminated'],
} as const;

const MIL_GRADE = { Low: 'low', Medium: 'moderate', Serious: 'high', High: 'extreme' } as const;

/** A row for the severity classes 1 to 5. Level F is no row: a risk that has been eliminated has no exposure and no grade. */
function milRow(level: 'A' | 'B' | 'C' | 'D' | 'E'): readonly Grade[] {
  return MIL_STD_CATEGORY.map((category) => MIL_GRADE[MIL_STD_TABLE_III[level][category - 1] ?? 'High']);
}

export const MIL_STD_882E: TableMatrix = {
  id: 'mil-std-882e',
  title: '4 × 6 of MIL-STD-882E',
  gradeWords: { low: 'low', moderate: 'medium', high: 'serious', extreme: 'high' },
  levels: [
    { level: 1, word: 'improbable', from: 0, to: 0.001, onceIn: 'seldomer than once in 1,000 seasons' },
    { level: 2, word: 'remote', from: 0.001, to: 0.01, onceIn: 'once in 100 to 1,000 seasons' },
    { level: 3, word: 'occasional', from: 0.01, to: 0.1, onceIn: 'once in 10 to 100 seasons' },
    { level: 4, word: 'probable', from: 0.1, to: 1, onceIn: 'once in 1 to 10 seasons' },
    { level: 5, word: 'frequent', from: 1, to: null, onceIn: 'every season or oftener' },
  ],
  cells: [milRow('E'), milRow('D'), milRow('C'), milRow('B'), milRow('A')],
  kind: 'published table; our judgement frequencies and correspondence of classes',
  source: 'REFERENCES D.1, MIL-STD-882E Table III (READ-S)',
};

/** Three by three for schools that use no more: our own, made monotone, no source. */
export const THREE_BY_THREE: TableMatrix = {
  id: 'three-by-three',
  title: '3 × 3',
  gradeWords: { low: 'low', moderate: 'moderate', high: 'high', extreme: 'extreme' },
  levels: [
    { level: 1, word: 'unlikely', from: 0, to: 0.01, onceIn: 'seldomer than once in 100 seasons' },
    { level: 2, word: 'possible', from: 0.01, to: 0.1, onceIn: 'once in 10 to 100 seasons' },
    { level: 3, word: 'likely', from: 0.1, to: null, onceIn: 'once in 10 seasons or oftener' },
  ],
  // classes 1 and 2 share the mild column, 3 is the middle one, 4 and 5 share the severe one
  cells: [
    ['low', 'low', 'low', 'moderate', 'moderate'],
    ['low', 'low', 'moderate', 'high', 'high'],
    ['moderate', 'moderate', 'high', 'extreme', 'extreme'],
  ],
  kind: 'our judgement',
  source: 'common practice, no source',
};
