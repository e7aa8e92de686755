import { GradeMark } from '@/app/_components/ui/grade-mark';
import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { RiskResult, ScoreResult } from '@/lib/core/result';
import { endCouldKill } from '@/lib/wording/could-kill';
import { onceInWords } from '@/lib/wording/frequency';
import { rounded } from '@/lib/wording/numbers';
import { severityWord } from '@/lib/wording/severity';

interface BranchesTableProps { readonly risk: RiskResult; readonly gradeWords: ScoreResult['matrix']['gradeWords']; readonly weights: Content['harmWeights'] }

/** The ends of a risk: how often each, how bad, and which one decides the grade. */
export function BranchesTable({ risk, gradeWords, weights }: BranchesTableProps) {
  return (
    <Table
      caption={`Ends of: ${risk.title}`}
      columns={[
        { head: 'What it does', cell: (branch) => `${branch.title}${branch.id === risk.decidedBy ? ' (decides the grade)' : ''}` },
        { head: 'How often', cell: (branch) => onceInWords(branch.frequency) },
        { head: 'How bad', cell: (branch) => `${severityWord(branch.severity)}, class ${branch.severity}` },
        { head: 'Grade', cell: (branch) => <GradeMark grade={branch.grade} word={branch.grade === 'not applicable' ? undefined : gradeWords[branch.grade]} couldKill={endCouldKill(branch, weights)} /> },
        { head: 'Harm', numeric: true, cell: (branch) => rounded(branch.harm) },
      ]}
      rows={risk.branches}
      rowKey={(branch) => branch.id}
    />
  );
}
