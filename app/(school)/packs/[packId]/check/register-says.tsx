import { cellTypeFacts } from '@/lib/packs/cell-types';
import type { PackHistory } from '@/lib/packs/pack-history';
import { PACK_LIMITS } from '@/lib/server/packs/pack-limits';

/** What the register says of a pack, shown instead of asked. */
export function RegisterSays({ history: { pack, charges } }: { readonly history: PackHistory }) {
  const cell = cellTypeFacts(PACK_LIMITS).find(({ id }) => id === pack.cellType);
  const facts = [
    ['Full voltage of a cell', cell?.label ?? pack.cellType],
    ['Where it comes from', pack.secondHand === null ? 'not known' : pack.secondHand ? 'second-hand, a gift or self-made' : 'bought new'],
    ['First used', pack.firstUsedOn ?? pack.boughtOn ?? 'not known'],
    ['Charges', charges === null ? 'not known' : String(charges)],
  ] as const;
  return <dl className="checks" aria-label="From the register">{facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value}</dd></div>)}</dl>;
}
