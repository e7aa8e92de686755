import type { CellType, PackLimits, PackRule } from '@/lib/content/model';
import { ok, refuse, type Result } from '@/lib/units/quantity';

/** The figures one pack is held to. Cannot be handed on as limits for another pack. */
export type LimitsOfPack = Pick<PackLimits, 'rules' | 'storageCharge' | 'full'>;

/**
 * The limits for a pack by the full voltage of its cells. Not known or not marked is held to the standard, the
 * lowest; cells out of scope are refused in words, because every voltage would mean something else. The
 * first edition knows only one kind of cell.
 * @param cellType id of a cell type of the content, null when nobody knows
 * @returns the figures, or why there are none
 */
export function limitsOfPack(limits: PackLimits, cellType: string | null): Result<LimitsOfPack> {
  const { rules, full, storageCharge } = limits;
  const standard: LimitsOfPack = { full, storageCharge, rules: withFollowed(rules) };
  if (limits.check === undefined || cellType === null) return ok(standard);
  const type = limits.check.cellTypes.find(({ id }) => id === cellType);
  if (type === undefined) return refuse(`there is no cell type called ${cellType}`);
  switch (type.sort) {
    case 'standard':
    case 'as standard': return ok(standard);
    case 'out of scope': return refuse(type.why);
    case 'own figures': return ok({
      full: type.full,
      storageCharge: type.storageCharge,
      rules: withFollowed(rules.map((rule) => withOwnFigure(rule, type))),
    });
  }
}

function withOwnFigure(rule: PackRule, type: Extract<CellType, { sort: 'own figures' }>): PackRule {
  const own = type.rules.find(({ id }) => id === rule.id);
  return own === undefined ? rule : { ...rule, value: own.value, kind: own.kind, source: own.source, schoolMay: own.schoolMay };
}

/** Last, so that a rule follows the figure that is in force. */
function withFollowed(rules: readonly PackRule[]): readonly PackRule[] {
  return rules.map((rule) => {
    const followed = rules.find(({ id }) => id === rule.follows);
    return followed === undefined ? rule : { ...rule, value: followed.value };
  });
}
