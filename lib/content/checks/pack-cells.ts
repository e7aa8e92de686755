import type { CellType, PackCheck, PackLimits, PackRule } from '../model';
import { type ContentFault, idFaults, kindFaults, must } from './fault';

/** Kinds of cell that some pack could be judged too mildly by. */
export function cellTypeFaults(limits: PackLimits, check: PackCheck): readonly ContentFault[] {
  return [
    ...idFaults('cell types', check.cellTypes),
    ...must(check.cellTypes.filter(({ sort }) => sort === 'standard').length === 1, 'cell types', 'not exactly one standard'),
    ...check.cellTypes.flatMap((type) => typeFaults(type, limits, check)),
  ];
}

function typeFaults(type: CellType, limits: PackLimits, check: PackCheck): readonly ContentFault[] {
  const where = `cell type ${type.id}`;
  const stops = limits.rules.filter((rule) => rule.value === type.id).flatMap((rule) => rule.blocks ?? []);
  switch (type.sort) {
    case 'standard': return [...kindFaults(type.nominal.kind, where), ...windowFaults(limits, where)];
    case 'as standard': return must(stops.includes('charge'), where, 'may be charged, although nobody knows what it is');
    case 'out of scope': return must(['charge', 'fly', 'travel'].every((use) => stops.some((stop) => stop === use)), where, 'is out of scope, but not stopped');
    case 'own figures': return [
      ...[type.nominal, type.full, type.storageCharge].flatMap(({ kind }) => kindFaults(kind, where)),
      ...windowFaults(type, where),
      ...type.rules.flatMap((own) => [
        ...kindFaults(own.kind, where),
        ...must(isByCell(limits.rules.find(({ id }) => id === own.id), check), where, `has a figure for ${own.id}, which is no rule of cells`),
        ...must(own.schoolMay === undefined || (own.schoolMay.min <= own.value && own.value <= own.schoolMay.max), where, `${own.id} outside what a school may set`),
      ]),
    ];
  }
}

function isByCell(rule: PackRule | undefined, check: PackCheck): boolean {
  return check.measures.some(({ id, byCell }) => id === rule?.measure && byCell === true);
}

/** Storage charge lies below full, its target and what a school may set inside the window. */
function windowFaults({ storageCharge, full }: Pick<PackLimits, 'storageCharge' | 'full'>, where: string): readonly ContentFault[] {
  const { low, target, high, schoolMay } = storageCharge;
  const rising = low <= schoolMay.min && schoolMay.min <= target && target <= schoolMay.max && schoolMay.max <= high && high < full.value;
  return must(rising, where, 'its storage charge does not lie between its ends, or not below full');
}
