import { riskMatrixScene } from '@/lib/charts/risk-matrix';
import type { GradeOrNone, RiskResult } from '@/lib/core/result';
import { COULD_KILL, riskCouldKill } from '@/lib/wording/could-kill';
import { onceInWords, onceRangeWords } from '@/lib/wording/frequency';
import { gradeRule, gradeWord } from '@/lib/wording/grades';
import { percent, rounded } from '@/lib/wording/numbers';
import { severityWord } from '@/lib/wording/severity';
import { type Block, type GradeCell, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** The ranking and the matrix: today's grade and the grade after the actions side by side. The table runs on over pages, so it leaves no gap where the picture would. */
export function riskSection(facts: AssessmentFacts): PaperSection {
  const { result } = facts;
  const blocks: readonly Block[] = [
    text('Ranked by harm: how often × how bad, added over all ends. Numbers rank, they do not permit.'),
    { kind: 'table', caption: 'Risks that remain, most harm first', columns: [{ head: 'Risk', width: 5 }, { head: 'Today', width: 2 }, { head: 'After', width: 1.7 }, { head: 'How often', width: 3 }, { head: 'Harm', width: 1.2, align: 'right' }], rows: applying(result.risks).map((risk) => riskRow(facts, risk)), empty: 'Nothing here is exposed to any of the risks.' },
    ...notApplying(result.risks),
    { kind: 'figure', scene: riskMatrixScene(result), caption: `${result.matrix.title}. A filled number stands where a risk is today, an open ring where the open actions take it.` },
    text((['low', 'moderate', 'high', 'extreme'] as const).map((grade) => `${gradeWord(grade, result.matrix.gradeWords[grade])}: ${gradeRule(grade)}`).join(' '), 'quiet'),
  ];
  return { id: 'risks', title: 'Risks that remain', blocks };
}

const applying = (risks: readonly RiskResult[]): readonly RiskResult[] => risks.filter((risk) => risk.grade !== 'not applicable');

function riskRow(facts: AssessmentFacts, risk: RiskResult) {
  const worst = risk.branches.find((branch) => branch.id === risk.decidedBy);
  const kills = riskCouldKill(risk, facts.content.harmWeights) ? COULD_KILL : '';
  const share = risk.grade === 'not applicable' ? '' : `in ${percent(risk.gradeShares[risk.grade])} of draws`;
  return [
    { text: `${risk.rank} ${risk.title}`, under: worst === undefined ? '' : `${severityWord(worst.severity)}: ${worst.title}` },
    gradeCell(facts, risk.grade, [kills, share].filter((word) => word !== '').join(', ')),
    gradeCell(facts, risk.plannedGrade, ''),
    { text: onceInWords(risk.topFrequencyMean), under: onceRangeWords(risk.frequency) },
    rounded(risk.harmMean),
  ];
}

function gradeCell({ result }: AssessmentFacts, grade: GradeOrNone, note: string): GradeCell {
  const cell = grade === 'not applicable' ? { grade: 'none' as const, word: gradeWord(grade) } : { grade, word: gradeWord(grade, result.matrix.gradeWords[grade]) };
  return note === '' ? cell : { ...cell, note };
}

function notApplying(risks: readonly RiskResult[]): readonly Block[] {
  const titles = risks.filter((risk) => risk.grade === 'not applicable').map((risk) => risk.title);
  return titles.length === 0 ? [] : [text(`Do not arise here, because nothing is exposed to them: ${titles.join('; ')}.`, 'quiet')];
}
