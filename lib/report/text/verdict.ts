import type { Grade, ScoreResult } from '@/lib/core/result';
import { onceInWords } from '@/lib/wording/frequency';
import { gradeRule, gradeWord } from '@/lib/wording/grades';
import { rounded } from '@/lib/wording/numbers';
import { wrap, PAGE_WIDTH } from './layout';

const WORST_FIRST: readonly Grade[] = ['extreme', 'high', 'moderate', 'low'];

/** What the whole comes to: one sentence on stop conditions, one on the worst grade, one on fires and harm. */
export function verdictLines(result: ScoreResult): readonly string[] {
  return [
    ...wrap(result.title, PAGE_WIDTH),
    ...wrap(`${stopSentence(result.stops.length)} ${gradeSentence(result)}`, PAGE_WIDTH),
    '',
    ...wrap(fireSentence(result), PAGE_WIDTH),
    ...wrap(harmSentence(result), PAGE_WIDTH),
  ];
}

function stopSentence(stops: number): string {
  if (stops === 0) return 'No stop condition holds.';
  return `Not ready to sign: ${stops === 1 ? 'one stop condition holds' : `${stops} stop conditions hold`}.`;
}

function gradeSentence({ risks, matrix }: ScoreResult): string {
  const worst = WORST_FIRST.find((grade) => risks.some((risk) => risk.grade === grade));
  if (worst === undefined) return 'No risk applies here.';
  const count = risks.filter((risk) => risk.grade === worst).length;
  return `The worst grade is ${gradeWord(worst, matrix.gradeWords[worst])}, of ${count === 1 ? 'one risk' : `${count} risks`}: ${lowerFirst(gradeRule(worst))}`;
}

function fireSentence({ batteryFiresPerSeason }: ScoreResult): string {
  return `A battery fire of any kind: ${onceInWords(batteryFiresPerSeason)}.`;
}

function harmSentence({ totalHarm, totalHarmDraws, inherentHarm }: ScoreResult): string {
  const range = `${rounded(totalHarmDraws.p05)} and ${rounded(totalHarmDraws.p95)}`;
  return `Harm in all: ${rounded(totalHarm)} points a season, nine draws in ten between ${range}; ${rounded(inherentHarm)} with nothing done. A scare is 1 point, a life in danger 10,000.`;
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
