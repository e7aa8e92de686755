import { Section } from '@/app/_components/ui/section';
import type { CheckRecord } from '@/lib/packs/checks/check-record';
import { wordsOfVerdict } from '@/lib/packs/checks/verdict-words';
import type { StateChange } from '@/lib/packs/pack';
import { stateWords } from '@/lib/packs/states/pack-states';
import { PACK_LIMITS } from '@/lib/server/packs/pack-limits';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

interface LogPartProps { readonly checks: readonly CheckRecord[]; readonly changes: readonly StateChange[]; readonly style: DateStyle }

/** What was seen of the pack and done with it, newest first. */
export function LogPart({ checks, changes, style }: LogPartProps) {
  const entries = [...checks.map((check) => ({ id: check.id, at: check.at, words: checkWords(check) })), ...changes.map((change) => ({ id: change.id, at: change.at, words: changeWords(change) }))];
  entries.sort((one, other) => other.at.getTime() - one.at.getTime());
  return (
    <Section id="log" title="What happened to it" aside={entries.length === 1 ? 'one entry' : `${entries.length} entries`}>
      <ul className="rows log">
        {entries.map(({ id, at, words }) => <li key={id}><time dateTime={at.toISOString()}>{momentWords(at, style)}</time><span>{words}</span></li>)}
      </ul>
    </Section>
  );
}

function checkWords({ result, byName, cellVolts }: CheckRecord): string {
  const verdict = result.verdict === null ? 'nothing measured' : (wordsOfVerdict(PACK_LIMITS, result.verdict)?.title ?? result.verdict);
  const volts = cellVolts.length === 0 ? '' : ` ${cellVolts.map((cell) => (cell === null ? 'nothing' : cell.toFixed(2))).join(', ')} V.`;
  return `Checked by ${byName}: ${verdict}.${volts}`;
}

function changeWords({ from, to, reason, byName, placeNow }: StateChange): string {
  if (from === null) return `${reason}, by ${byName}.`;
  if (from === to) return `${placeNow === null ? `Still ${stateWords(to)}: ` : ''}${reason}. By ${byName}.`;
  return `From ${stateWords(from)} to ${stateWords(to)}, by ${byName}. ${reason}.`;
}
