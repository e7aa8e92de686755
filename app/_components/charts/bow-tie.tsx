import { GradeMark } from '@/app/_components/ui/grade-mark';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { bowTieScene, threadScene } from '@/lib/charts/bow-tie';
import { bowTie, type BowTieBar, type BowTieData, type BowTie as Tie } from '@/lib/charts/bow-tie-model';
import type { Content } from '@/lib/content/model';
import type { ControlInRisk } from '@/lib/core/result';
import { endCouldKill } from '@/lib/wording/could-kill';
import { percent } from '@/lib/wording/numbers';
import { severityWord } from '@/lib/wording/severity';
import { stateWord } from '@/lib/wording/states';
import { BowTieKey } from './bow-tie-key';
import { SceneSvg } from './scene-svg';

interface WithWeights { readonly weights: Content['harmWeights'] }

/** One risk: what stops it, what limits its ends, and how much each takes away. */
export function BowTie({ weights, ...data }: BowTieData & WithWeights) {
  const tie = bowTie(data);
  return (
    <figure className="fig">
      <SceneSvg scene={bowTieScene(tie)} shown="wide" />
      <div className="at-narrow"><Knot tie={tie} weights={weights} /></div>
      <figcaption>The longer a bar, the more it takes away; the thread thins as less gets past. A hatched bar is not there: it would take this much away.</figcaption>
      <BowTieKey tie={tie} />
      <DisclosureTable
        caption={`Controls of: ${tie.risk.title}`}
        columns={[
          { head: 'Control', cell: (use) => use.title },
          { head: 'State', cell: (use) => stateWord(use.state) },
          { head: 'Where', cell: (use) => tie.risk.branches.find((branch) => branch.id === use.branch)?.title ?? 'before the event' },
          { head: 'Gets past it', numeric: true, cell: (use) => pastWords(use) },
        ]}
        rows={tie.risk.controls}
        rowKey={(use) => `${use.control} ${use.branch ?? ''}`}
      />
    </figure>
  );
}

/** The bow tie for a phone: each thread by itself, one under the other. */
function Knot({ tie, weights }: { readonly tie: Tie } & WithWeights) {
  return (
    <div className="knot">
      <p className="side-h">What stops it</p>
      <div className="line"><SceneSvg scene={threadScene({ bars: tie.prevent }, spoken(tie.prevent))} /></div>
      <p className="top-event">{tie.risk.title}</p>
      <p className="side-h">What it does, and what limits it</p>
      {tie.branches.map(({ branch, bars }) => (
        <div className="line" key={branch.id}>
          <p className="end">{branch.title}</p>
          <p className="small row"><GradeMark grade={branch.grade} couldKill={endCouldKill(branch, weights)} /><span className="muted">{severityWord(branch.severity).toLowerCase()}</span></p>
          {bars.length === 0 ? <p className="small muted">nothing limits it</p> : <SceneSvg scene={threadScene({ bars }, spoken(bars))} />}
        </div>
      ))}
    </div>
  );
}

function spoken(bars: readonly BowTieBar[]): string {
  return bars.map((bar) => `${bar.sign} ${bar.title}: ${stateWord(bar.state)}`).join('. ');
}

function pastWords(use: ControlInRisk): string {
  if (use.state === 'not applicable') return '';
  return use.counts ? percent(use.effectiveFailure) : 'counted with another';
}
