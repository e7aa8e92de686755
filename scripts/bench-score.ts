/**
 * What scoring costs: milliseconds and draws per second on the reference venues, and the three functions
 * that take most of it. Every figure is measured in this run, on this machine, beside a plain sampler of
 * the same model that evaluates the readable closed form once a draw.
 */
import { readFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { currentContent } from '@/lib/content/editions';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { AssessmentDocument } from '@/lib/core/document';
import { quickScore } from '@/lib/core/quick-score';
import { drawPlan } from '@/lib/core/risk/draw-plan';
import { runDraws } from '@/lib/core/risk/draws';
import { riskSetup } from '@/lib/core/risk/risk-setup';
import { score } from '@/lib/core/score';
import { hottestFunctions } from './bench/hottest-functions';
import { medianMilliseconds } from './bench/median-milliseconds';
import { plainDraws } from './bench/plain-draws';

const VENUES = ['good-hall', 'ordinary-classroom', 'bad-store'];
const PLAIN_DRAWS = 200;

const documentOf = (venue: string): AssessmentDocument =>
  JSON.parse(readFileSync(new URL(`../public/examples/${venue}.json`, import.meta.url), 'utf8')) as AssessmentDocument;

function measure(venue: string): void {
  const document = documentOf(venue);
  const resolved = resolveVenue(currentContent, document);
  const setup = riskSetup(resolved, document);
  const plan = drawPlan(setup, resolved);
  const few = medianMilliseconds(() => runDraws(plan, 4000, 1), 15);
  const many = medianMilliseconds(() => runDraws(plan, 100_000, 1), 5);
  const plain = medianMilliseconds(() => plainDraws(setup, resolved, PLAIN_DRAWS, 1), 5);
  const whole = medianMilliseconds(() => score(currentContent, document, { seed: 1, draws: 4000, inputHash: '' }), 7);
  const quick = medianMilliseconds(() => quickScore(currentContent, document), 15);
  const perSecond = (draws: number, ms: number): string => Math.round((draws / ms) * 1000).toLocaleString('en-GB');
  console.log(venue);
  console.log(`  4,000 draws              ${few.toFixed(1)} ms   ${perSecond(4000, few)} draws/s`);
  console.log(`  100,000 draws            ${many.toFixed(0)} ms   ${perSecond(100_000, many)} draws/s`);
  console.log(`  plain sampler, ${PLAIN_DRAWS} draws  ${plain.toFixed(1)} ms   ${perSecond(PLAIN_DRAWS, plain)} draws/s`);
  console.log(`  closed values only       ${quick.toFixed(1)} ms`);
  console.log(`  whole score, 4,000 draws ${whole.toFixed(1)} ms (ranking, actions with intervals, best set, doubt)`);
}

console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}; medians of repeated runs after warming up`);
for (const venue of VENUES) measure(venue);
const profiled = documentOf('ordinary-classroom');
const hottest = await hottestFunctions(() => {
  for (let run = 0; run < 10; run += 1) score(currentContent, profiled, { seed: run, draws: 4000, inputHash: '' });
});
console.log('hottest functions of the whole score, own time');
for (const one of hottest.slice(0, 3)) console.log(`  ${(one.share * 100).toFixed(0).padStart(3)} %  ${one.name}  ${one.file}`);
