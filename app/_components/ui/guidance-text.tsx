import type { FilledGuidance } from '@/lib/content/fill-guidance';
import type { GuidanceLine } from '@/lib/content/model';

/** The lines of a guidance text as they are written: the words that carry in bold, and who must still confirm them. */
export function GuidanceText({ guidance }: { readonly guidance: FilledGuidance }) {
  return (
    <div className="guidance">
      {guidance.form === 'steps'
        ? <ol className="prose">{guidance.lines.map((line) => <li key={line.lead}><Line line={line} /></li>)}</ol>
        : guidance.lines.map((line) => <p key={line.lead}><Line line={line} /></p>)}
      <p className="small muted">{capital(guidance.confirm)}.</p>
    </div>
  );
}

function Line({ line }: { readonly line: GuidanceLine }) {
  return <><b>{line.lead}</b>{line.text === undefined ? null : ` ${line.text}`}</>;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
