import { memo } from 'react';
import { MarginNote } from '@/app/_components/ui/margin-note';
import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { inHundredTeams, onceInWords } from '@/lib/wording/frequency';
import { percent, rounded, whole } from '@/lib/wording/numbers';

/** Beside the sheet: how sure we are, what a season holds, and what makes the same numbers again. */
export const MarginNotes = memo(function MarginNotes({ content, result }: { readonly content: Content; readonly result: ScoreResult }) {
  const { battery, electrical } = result;
  return (
    <>
      <MarginNote title="How sure we are"><p>{firstPlaces(result)}</p><p>Most rates and weights are our judgement. They rank; they do not permit.</p></MarginNote>
      <MarginNote title="A season here">
        <p>A battery fire {onceInWords(result.batteryFiresPerSeason)}; {inHundredTeams(result.batteryFiresPerSeason)}.</p>
        <p>Harm {rounded(result.totalHarm)} points ({rounded(result.totalHarmDraws.p05)} to {rounded(result.totalHarmDraws.p95)}){result.plannedHarm < result.totalHarm ? `; ${rounded(result.plannedHarm)} after what is planned` : ''}; {rounded(result.inherentHarm)} with no control at all.</p>
      </MarginNote>
      <MarginNote title="Packs and circuit">
        <ul>
          <li>{rounded(battery.packWh)} Wh a pack, {whole(battery.totalWh)} Wh in all, {whole(battery.storedWh)} Wh stored</li>
          <li>1C is {rounded(battery.currentAt1C)} A; the balance plug has {battery.balancePins} pins</li>
          <li>{whole(electrical.loadWatts)} W on a circuit that may carry {whole(electrical.allowedWatts)} W for hours ({percent(electrical.loadShare)})</li>
        </ul>
      </MarginNote>
      <ReferenceNote content={content} result={result} />
    </>
  );
});

function firstPlaces({ risks }: ScoreResult): string {
  const likely = [...risks].sort((one, other) => other.rankFirstShare - one.rankFirstShare).slice(0, 2);
  const [first, second] = likely;
  if (first === undefined || second === undefined) return '';
  return `“${first.title}” does most harm in ${percent(first.rankFirstShare)} of the draws, “${second.title}” in ${percent(second.rankFirstShare)}.`;
}

/** What makes the same numbers again, years later. */
function ReferenceNote({ content: { edition = 1 }, result }: { readonly content: Content; readonly result: ScoreResult }) {
  return (
    <MarginNote title="Reference">
      <p className="num">Engine {result.engineVersion}, content edition {edition} ({result.contentVersion}), seed {result.seed}, {whole(result.draws)} draws, input <span className="hash">{result.inputHash.slice(0, 16)}</span></p>
    </MarginNote>
  );
}
