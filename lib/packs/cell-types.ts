import type { CellType, PackLimits } from '@/lib/content/model';

/** Kinds of cell by the full voltage on the label, as the content names them. A test holds the two together. */
export const CELL_TYPES = ['full-4-20', 'full-4-35', 'not-marked', 'full-other', 'other-chemistry'] as const;
export type CellTypeId = (typeof CELL_TYPES)[number];

/** What is shown and computed of a kind of cell. */
export interface CellTypeFacts {
  readonly id: string;
  readonly label: string;
  /** nominal and full voltage of a cell, V; null where this content does not judge such cells */
  readonly nominalV: number | null;
  readonly fullV: number | null;
  readonly storageV: number | null;
  /** what there is to say against it, in words */
  readonly caution: string | null;
}

/**
 * Returns the kinds of cell of the limits in force, with their figures; one that is not marked has those of the lowest.
 * @throws when the limits have no cell types or no standard one: a fault of the content
 */
export function cellTypeFacts(limits: PackLimits): readonly CellTypeFacts[] {
  const types = limits.check?.cellTypes ?? [];
  const standard = types.find((type) => type.sort === 'standard');
  if (standard === undefined) throw new Error('the pack limits have no standard cell type');
  return types.map((type) => ({ id: type.id, label: type.label, ...figures(type, standard.nominal.value, limits) }));
}

function figures(type: CellType, standardNominal: number, limits: PackLimits): Omit<CellTypeFacts, 'id' | 'label'> {
  const standard = { nominalV: standardNominal, fullV: limits.full.value, storageV: limits.storageCharge.target };
  switch (type.sort) {
    case 'standard': return { ...standard, caution: null };
    case 'as standard': return { ...standard, caution: type.why };
    case 'own figures': return { nominalV: type.nominal.value, fullV: type.full.value, storageV: type.storageCharge.target, caution: null };
    case 'out of scope': return { nominalV: null, fullV: null, storageV: null, caution: type.why };
  }
}
