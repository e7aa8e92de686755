import Link from 'next/link';
import { PackStateMark } from '@/app/_components/packs/pack-state-mark';
import { MarginNote } from '@/app/_components/ui/margin-note';
import type { LastCharge } from '@/lib/server/packs/pack-photos';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import type { Pack } from '@/lib/packs/pack';
import { packFigures } from '@/lib/packs/pack-figures';
import type { PackHistory } from '@/lib/packs/pack-history';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { calendarDayWords, type DateStyle, dayWords } from '@/lib/wording/dates';

interface PackNotesProps { readonly history: PackHistory; readonly lastCharge: LastCharge | null; readonly limits: SchoolPackLimits; readonly style: DateStyle }

/** Beside the sheet: the state, what the label says and what follows from it, where the pack comes from. */
export function PackNotes({ history: { pack }, lastCharge, limits, style }: PackNotesProps) {
  return (
    <>
      <MarginNote title="State"><p><PackStateMark state={pack.state} /> since {dayWords(pack.stateSince, style)}</p>{pack.stateReason === null ? null : <p>{pack.stateReason}</p>}</MarginNote>
      <MarginNote title="Last charge">{lastCharge === null ? <p>None is logged.</p> : <p>{dayWords(lastCharge.at, style)}, {lastCharge.place}. Logged by <Link href={`/sessions/${lastCharge.sessionId}`} prefetch={false}>{lastCharge.byName}</Link></p>}</MarginNote>
      <MarginNote title="From its label"><ul>{labelLines(pack, limits).map((line) => <li key={line}>{line}</li>)}</ul></MarginNote>
      <MarginNote title="Where it comes from"><ul>{originLines(pack, style).map((line) => <li key={line}>{line}</li>)}</ul></MarginNote>
      {pack.notes === null ? null : <MarginNote title="Notes"><p>{pack.notes}</p></MarginNote>}
      <MarginNote title="If it smokes, hisses, smells or grows"><p><strong>Leave it. Everybody out.</strong> <Link href="/emergency" prefetch={false}>What to do now</Link></p></MarginNote>
    </>
  );
}

function labelLines(pack: Pack, limits: SchoolPackLimits): readonly string[] {
  const cell = cellTypeFacts(limits).find(({ id }) => id === pack.cellType);
  const cells = [`${pack.series} cells in series${pack.parallel > 1 ? `, ${pack.parallel} rows side by side` : ''}, ${pack.capacityMah} mAh`];
  if (cell === undefined) return cells;
  const { energyWh, energyFrom, chargeAt1C, air, fullV, storageV } = packFigures(pack, cell);
  return [
    ...cells,
    `Full voltage of a cell: ${cell.label}`,
    ...(energyWh === null ? [] : [`${energyWh.toFixed(1)} Wh, ${energyFrom === 'printed' ? 'as printed' : 'computed'}`]),
    `Charge at ${chargeAt1C.toFixed(2)} A or less`,
    ...(fullV === null || storageV === null ? [] : [`Full at ${fullV.toFixed(1)} V, storage charge ${storageV.toFixed(1)} V`]),
    ...(air === null ? [] : [`By air, while sound: ${air}`]),
    ...(pack.cRating === null ? [] : [`Discharge rating ${pack.cRating} C`]),
    ...(pack.connector === null ? [] : [`Connector ${pack.connector}`]),
  ];
}

function originLines(pack: Pack, style: DateStyle): readonly string[] {
  const day = (text: string | null, words: string): readonly string[] => (text === null ? [] : [`${words} ${calendarDayWords(text, style)}`]);
  return [
    pack.secondHand === null ? 'Nobody is sure whether it was bought new' : pack.secondHand ? 'Second-hand, a gift or self-made' : 'Bought new',
    ...[pack.maker, pack.seller].flatMap((name) => (name === null ? [] : [name])),
    ...day(pack.boughtOn, 'Bought'),
    ...day(pack.firstUsedOn, 'First used'),
    ...(pack.place === null ? [] : [`Kept: ${pack.place}`]),
  ];
}
