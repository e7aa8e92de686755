import { GradeMark } from '@/app/_components/ui/grade-mark';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { riskMatrixScene } from '@/lib/charts/risk-matrix';
import type { Content } from '@/lib/content/model';
import type { GradeOrNone, RiskResult, ScoreResult } from '@/lib/core/result';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { onceInWords } from '@/lib/wording/frequency';
import { severityWord } from '@/lib/wording/severity';
import { MatrixMoves } from './matrix-moves';
import { SceneSvg } from './scene-svg';

interface RiskMatrixProps { readonly result: Pick<ScoreResult, 'matrix' | 'risks'>; readonly weights: Content['harmWeights'] }

/** The school's matrix with every risk's way; on a phone the same as a list, because its cells would be too small. */
export function RiskMatrix({ result, weights }: RiskMatrixProps) {
  const scene = riskMatrixScene(result);
  const { gradeWords } = result.matrix;
  const risks = result.risks.filter((risk) => risk.grade !== 'not applicable');
  return (
    <figure className="fig">
      <SceneSvg scene={scene} shown="wide" />
      <div className="at-narrow"><MatrixMoves risks={risks} gradeWords={gradeWords} weights={weights} /></div>
      <figcaption>{captionOf(risks)}</figcaption>
      {scene.listed.length === 0 ? null : <div className="at-wide"><p className="small muted after">No place left in the drawing for:</p><MatrixMoves risks={scene.listed} gradeWords={gradeWords} weights={weights} /></div>}
      <DisclosureTable
        caption="Grades today and once the open actions are done"
        columns={[
          { head: 'Risk', cell: (risk) => `${risk.rank} ${risk.title}` },
          { head: 'Today', cell: (risk) => grade(risk.grade, gradeWords, riskCouldKill(risk, weights)) },
          { head: 'After', cell: (risk) => grade(risk.plannedGrade, gradeWords) },
          { head: 'Worst end', cell: (risk) => `${severityWord(risk.severity)}: ${risk.branches.find((branch) => branch.id === risk.decidedBy)?.title ?? ''}` },
          { head: 'How often, today', cell: (risk) => onceInWords(risk.topFrequencyMean) },
          { head: 'After', cell: (risk) => onceInWords(risk.plannedFrequency) },
        ]}
        rows={risks}
        rowKey={(risk) => risk.id}
      />
    </figure>
  );
}

function captionOf(risks: readonly RiskResult[]): string {
  const still = risks.filter((risk) => risk.plannedGrade === 'high' || risk.plannedGrade === 'extreme').length;
  const moved = risks.some((risk) => risk.plannedFrequency < risk.topFrequencyMean);
  const today = 'A filled number stands where the end that decides the grade stands today.';
  if (!moved) return `${today} No open action is planned yet, so nothing moves.`;
  const after = still === 0 ? 'none stays high' : `${still} ${still === 1 ? 'stays' : 'stay'} high or worse`;
  return `${today} The open ring is once the open actions are done; ${after}.`;
}

function grade(of: GradeOrNone, words: ScoreResult['matrix']['gradeWords'], couldKill = false) {
  return <GradeMark grade={of} word={of === 'not applicable' ? undefined : words[of]} couldKill={couldKill} />;
}
