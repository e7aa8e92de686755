import { WIDE } from '@/lib/charts/scene';
import { smokeScene } from '@/lib/charts/smoke-curve';
import { smokeThresholds } from '@/lib/charts/smoke-points';
import type { SmokeCase } from '@/lib/core/result';
import { durationWords, ppm } from '@/lib/wording/measures';
import { rounded } from '@/lib/wording/numbers';
import { severityWord } from '@/lib/wording/severity';
import { type Block, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** Smoke of this room, as a picture with what it assumes. It tells where to be, never how long one may stay. */
export function screeningSection(facts: AssessmentFacts): PaperSection {
  const { result, content } = facts;
  const { lot } = result.smoke;
  const blocks: readonly Block[] = [
    text('Everybody leaves at the first smoke, not at the alarm. Nobody goes back in.', 'strong'),
    { kind: 'figure', scene: smokeScene(lot, smokeThresholds(content), WIDE), caption: `Smoke if the packs that touch burn: ${packs(lot)} in ${rounded(lot.volume)} m³ with ${rounded(lot.airChanges)} air changes an hour. Sand: low to high yields. Mixed air; near the pack it is worse. Other poisonous gases and soot are not counted.` },
    smokeTable(facts),
  ];
  return { id: 'screening', title: 'Smoke in the room', blocks };
}

const packs = (smoke: SmokeCase): string => `${smoke.packs} ${smoke.packs === 1 ? 'pack' : 'packs'}`;

function smokeTable({ result }: AssessmentFacts): Block {
  const cases: readonly (readonly [string, SmokeCase])[] = [
    ['One pack on charge', result.smoke.one], ['Packs that touch', result.smoke.lot], ['All on the table', result.smoke.allOnTable], ['In the store', result.smoke.storeLot], ['In the vehicle', result.smoke.vehicle],
  ];
  return {
    kind: 'table',
    caption: 'Hydrogen fluoride in the mixed air, low, middle and high yields',
    columns: [{ head: 'What burns', width: 3 }, { head: 'Peak', width: 3 }, { head: 'Life at risk after', width: 3 }, { head: 'Class for people', width: 3 }],
    rows: cases.map(([name, smoke]) => {
      const { low, mid, high } = smoke.levels;
      const reached = mid.HF.secondsToAegl3;
      return [
        { text: name, under: packs(smoke) },
        { text: ppm(mid.HF.peakPpm), under: `${ppm(low.HF.peakPpm)} to ${ppm(high.HF.peakPpm)}` },
        reached === null ? 'not reached on the middle estimate' : durationWords(reached),
        { text: severityWord(mid.smokeClass), under: low.smokeClass === high.smokeClass ? '' : `${severityWord(low.smokeClass)} to ${severityWord(high.smokeClass)}` },
      ];
    }),
    empty: '',
  };
}
