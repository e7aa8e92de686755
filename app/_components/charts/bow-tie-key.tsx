import type { BowTie, BowTieBar } from '@/lib/charts/bow-tie-model';
import { stateWord } from '@/lib/wording/states';

/** Names of the bars, by their sign, what stops it first. */
export function BowTieKey({ tie }: { readonly tie: BowTie }) {
  const stops = tie.key.filter((bar) => tie.prevent.some((one) => one.sign === bar.sign));
  const limits = tie.key.filter((bar) => !stops.includes(bar));
  return (
    <div className="tie-key">
      <KeyPart title="What stops it" bars={stops} />
      <KeyPart title="What limits it" bars={limits} />
    </div>
  );
}

function KeyPart({ title, bars }: { readonly title: string; readonly bars: readonly BowTieBar[] }) {
  return (
    <div>
      <p className="side-h">{title}</p>
      {bars.length === 0 ? <p className="small muted">nothing</p> : null}
      <ul className="keys">
        {bars.map((bar) => (
          <li key={bar.sign} className={bar.first ? 'first' : undefined}>
            <span className="sign" aria-hidden="true">{bar.sign}</span>
            <i className={`sw ${swatch(bar)}`} aria-hidden="true" />
            <span>{bar.title}, <span className="state">{stateWord(bar.state)}{bar.first ? ', do this first' : ''}</span></span>
          </li>
        ))}
      </ul>
    </div>
  );
}

function swatch(bar: BowTieBar): string {
  if (bar.first) return 'next';
  return { 'in place': 'in', partly: 'part', 'not sure': 'uns', absent: 'abs', 'not applicable': 'abs' }[bar.state];
}
