import 'server-only';
import type { PaperMaterial } from '@/lib/db/assessments/paper-material';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { wordsOfVerdict } from '@/lib/packs/checks/verdict-words';
import { cellsInWords } from '@/lib/packs/pack';
import { packFigures } from '@/lib/packs/pack-figures';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { isPackState, stateWords } from '@/lib/packs/states/pack-states';
import type { PaperPack } from '@/lib/papers/assessment/facts';
import { calendarDayWords, dayWords, type DateStyle } from '@/lib/wording/dates';
import { exact } from '@/lib/wording/numbers';

type RegisteredPack = PaperMaterial['packs'][number];

/** A pack of the register in the words of the paper; its energy is the one that the register shows. */
export function packOnPaper(limits: SchoolPackLimits, pack: RegisteredPack, style: DateStyle): PaperPack {
  const cell = cellTypeFacts(limits).find(({ id }) => id === pack.cellType);
  return {
    label: pack.label,
    kind: `${cellsInWords(pack)} ${exact(pack.capacityMah)} mAh`,
    energyWh: cell === undefined ? pack.printedWh : packFigures(pack, cell).energyWh,
    fullVoltage: cell?.label ?? 'not known',
    source: [pack.maker, pack.seller].filter((part) => part !== null).join(', ') || 'not known',
    age: pack.boughtOn === null ? 'not known' : `bought ${calendarDayWords(pack.boughtOn, style)}`,
    lastCheck: lastCheckWords(limits, pack, style),
    state: isPackState(pack.state) ? stateWords(pack.state) : pack.state,
    place: [pack.area?.name ?? null, pack.place].filter((part) => part !== null).join(', ') || 'not said',
  };
}

function lastCheckWords(limits: SchoolPackLimits, { checks: [check] }: RegisteredPack, style: DateStyle): string {
  if (check === undefined) return 'none';
  const verdict = limits.order.find((one) => one === check.verdict);
  return `${dayWords(check.at, style)}, ${verdict === undefined ? 'no verdict' : (wordsOfVerdict(limits, verdict)?.title ?? verdict)}`;
}
