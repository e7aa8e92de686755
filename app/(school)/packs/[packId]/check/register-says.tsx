import { cellTypeFacts } from '@/lib/packs/cell-types';
import type { PackHistory } from '@/lib/packs/pack-history';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';

/** What the register says of a pack, shown instead of asked. */
export function RegisterSays({ history: { pack, charges }, limits }: { readonly history: PackHistory; readonly limits: SchoolPackLimits }) {
  const cell = cellTypeFacts(limits).find(({ id }) => id === pack.cellType);
  const facts = [
    ['Full voltage of a cell', cell?.label ?? pack.cellType],
    ['Where it comes from', pack.secondHand === null ? 'not known' : pack.secondHand ? 'second-hand, a gift or self-made' : 'bought new'],
    ['First used', pack.firstUsedOn ?? pack.boughtOn ?? 'not known'],
    ['Charges', charges === null ? 'not known' : String(charges)],
  ] as const;
  return <dl className="checks" aria-label="From the register">{facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value}</dd></div>)}</dl>;
}
