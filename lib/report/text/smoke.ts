import type { SmokeCase, ScoreResult } from '@/lib/core/result';
import { durationWords, ppm } from '@/lib/wording/measures';
import { exact, rounded, whole } from '@/lib/wording/numbers';
import { hanging, heading } from './layout';

/** Smoke of one lot in the charging room: how thick it gets, and whether people are out before it harms. */
export function smokeLines({ smoke }: ScoreResult): readonly string[] {
  return [...heading('Smoke where packs charge'), ...hanging('', smokeSentence(smoke.lot))];
}

function smokeSentence(lot: SmokeCase): string {
  const { low, mid, high } = lot.levels;
  const burns = lot.packs === 1 ? 'One pack burns' : `${whole(lot.packs)} packs burn`;
  return `${burns} in ${exact(lot.volume)} m³ with ${rounded(lot.airChanges)} air changes an hour: HF rises to ${ppm(mid.HF.peakPpm)} (${rounded(low.HF.peakPpm)} to ${rounded(high.HF.peakPpm)}), `
    + `thicker near the fire; ${levelWords(mid.HF.secondsToAegl2)}; everybody is out after ${durationWords(lot.evacuationSeconds)}. `
    + 'Leave, and stay out until the fire service says otherwise.';
}

/** AEGL-2: the level from which people may be unable to escape or have lasting harm. */
function levelWords(seconds: number | null): string {
  const level = 'the level that can keep people from leaving (AEGL-2)';
  return seconds === null ? `${level} is not reached` : `${level} is reached after ${durationWords(seconds)}`;
}
