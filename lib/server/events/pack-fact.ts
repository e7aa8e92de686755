import 'server-only';
import { airCarriage } from '@/lib/core/battery/air-carriage';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { cellsInWords } from '@/lib/packs/pack';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { stateWords } from '@/lib/packs/states/pack-states';
import { wordsOfVerdict } from '@/lib/packs/checks/verdict-words';
import type { EventFacts } from '@/lib/papers/event/facts';
import type { WattHours } from '@/lib/units/quantity';
import { dayWords, type DateStyle } from '@/lib/wording/dates';
import { exact } from '@/lib/wording/numbers';
import { cellsOf, checkedPack, energyOf } from './check-facts';

/** A pack that travels in the words of a paper. */
export function packFact(limits: SchoolPackLimits, listed: ListedPack, byAir: boolean, style: DateStyle): EventFacts['packs'][number] {
  const { pack, lastCheck } = listed;
  const [energyWh, cells] = [energyOf(limits, listed), cellsOf(listed)];
  const verdict = lastCheck?.result.verdict ?? null;
  return {
    label: pack.label, kind: `${cellsInWords(pack)} ${exact(pack.capacityMah)} mAh`, energyWh,
    fullVoltage: cellTypeFacts(limits).find(({ id }) => id === pack.cellType)?.label ?? 'not known',
    state: stateWords(pack.state),
    lastCheck: lastCheck === null ? 'none' : `${dayWords(lastCheck.at, style)}, ${verdict === null ? 'no verdict' : (wordsOfVerdict(limits, verdict)?.title ?? verdict)}`,
    charge: cells === null ? 'not known' : `${volts(cells.low)} to ${volts(cells.high)} V a cell`,
    air: byAir ? (energyWh === null ? 'energy not known: does not fly' : airCarriage(energyWh as WattHours, checkedPack(limits, listed).damaged).why) : null,
  };
}

const volts = (value: number): string => value.toFixed(2);
