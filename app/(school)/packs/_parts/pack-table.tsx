import Link from 'next/link';
import { PackStateMark } from '@/app/_components/packs/pack-state-mark';
import { type ListedPack, needOf } from '@/lib/packs/pack-list';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { type DateStyle, shortDayWords } from '@/lib/wording/dates';

interface PackTableProps { readonly packs: readonly ListedPack[]; readonly limits: SchoolPackLimits; readonly now: Date; readonly style: DateStyle }

/** The packs, those that need somebody first. On a phone only what one decides by. */
export function PackTable({ packs, limits, now, style }: PackTableProps) {
  return (
    <div className="scroll" tabIndex={0} role="region" aria-label="Packs">
      <table className="packs">
        <caption className="vh">Packs, those that need you first</caption>
        <thead><tr><th scope="col">Pack</th><th scope="col">State</th><th scope="col">What it needs</th><th scope="col" className="n wide">Spread, mV</th><th scope="col" className="n wide">Cells</th><th scope="col" className="wide">Place</th><th scope="col" className="n wide">Checked</th></tr></thead>
        <tbody>{packs.map((listed) => <Row key={listed.pack.id} listed={listed} limits={limits} now={now} style={style} />)}</tbody>
      </table>
    </div>
  );
}

function Row({ listed, limits, now, style }: { readonly listed: ListedPack; readonly limits: SchoolPackLimits; readonly now: Date; readonly style: DateStyle }) {
  const { pack, lastCheck, isolatedAt } = listed;
  const need = needOf(limits, listed, now);
  const presses = need?.urgency === 'now';
  const isLocked = pack.state === 'isolated' && isolatedAt === null;
  return (
    <tr className={presses ? 'now' : undefined}>
      <th scope="row"><Link href={`/packs/${pack.id}`} prefetch={false}>{pack.label}</Link></th>
      <td><PackStateMark state={pack.state} presses={presses} words={isLocked ? 'isolate now' : undefined} /></td>
      <td className={presses ? 'press' : undefined}>{need?.words}</td>
      <td className="n wide">{spreadOf(lastCheck)}</td>
      <td className="n wide">{pack.series}</td>
      <td className="wide">{placeOf(listed, limits)}</td>
      <td className="n wide">{lastCheck === null ? 'never' : shortDayWords(lastCheck.at, style)}</td>
    </tr>
  );
}

function spreadOf(check: ListedPack['lastCheck']): string {
  const spread = check?.measures['cellSpread'];
  return typeof spread === 'number' ? String(Math.round(spread * 1000)) : '';
}

function placeOf({ pack, isolatedAt }: ListedPack, limits: SchoolPackLimits): string | null {
  if (pack.state !== 'isolated') return pack.place;
  return limits.check?.isolation.places.find(({ id }) => id === isolatedAt)?.label ?? 'nobody has said';
}
