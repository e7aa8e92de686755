import type { Content } from '@/lib/content/model';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { frequencyWords } from '@/lib/wording/frequency';
import { COULD_KILL, riskCouldKill } from '@/lib/wording/could-kill';
import { displayWidth } from './display-width';
import { gradeText } from './grade-text';
import { hanging, heading, padded, PAGE_WIDTH, wrap } from './layout';

/** Which two grades stand side by side: today with what is planned, or nothing done with today. */
interface Pair {
  readonly words: readonly [string, string];
  readonly note: string;
  readonly of: (risk: RiskResult) => readonly [GradeOrNone, GradeOrNone];
}
const WITH_PLAN: Pair = {
  words: ['today', 'planned'],
  note: 'Grade today, and once the planned actions are done.',
  of: (risk) => [risk.grade, risk.plannedGrade],
};
const WITHOUT_PLAN: Pair = {
  words: ['bare', 'today'],
  note: 'Grade with no control at all, and today; nothing is planned that changes it.',
  of: (risk) => [risk.inherentGrade, risk.grade],
};

/** Every risk that applies, most harm first, with its grade before and after and how often it starts. */
export function rankingLines(result: ScoreResult, content: Content): readonly string[] {
  const applies = result.risks.filter((risk) => risk.grade !== 'not applicable');
  const others = result.risks.filter((risk) => risk.grade === 'not applicable');
  const pair = result.plannedHarm < result.totalHarm ? WITH_PLAN : WITHOUT_PLAN;
  const width = columnWidth(applies, result, pair);
  return [
    ...heading('Risks, most harm first'),
    ...wrap(pair.note, PAGE_WIDTH),
    `    ${pair.words.map((word) => padded(word, width)).join('')}risk, and how often it starts`,
    ...applies.flatMap((risk) => riskLines(risk, result, content, pair, width)),
    ...(others.length === 0 ? [] : ['', ...hanging('Do not apply here: ', others.map(({ title }) => title).join('; '))]),
  ];
}

function columnWidth(risks: readonly RiskResult[], { matrix }: ScoreResult, pair: Pair): number {
  return 2 + Math.max(...risks.flatMap((risk) => pair.of(risk)).map((grade) => displayWidth(gradeText(grade, matrix))), ...pair.words.map(displayWidth));
}

function riskLines(risk: RiskResult, { matrix }: ScoreResult, { harmWeights }: Content, pair: Pair, width: number): readonly string[] {
  const grades = pair.of(risk).map((grade) => padded(gradeText(grade, matrix), width)).join('');
  const often = frequencyWords(risk.topFrequencyMean, risk.frequency);
  return [
    ...hanging(`${String(risk.rank).padStart(2)}  ${grades}`, risk.title),
    ...hanging(' '.repeat(4 + 2 * width), riskCouldKill(risk, harmWeights) ? `${often}; ${COULD_KILL}` : often),
  ];
}
