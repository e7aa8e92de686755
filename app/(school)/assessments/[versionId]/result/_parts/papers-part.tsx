import { Section } from '@/app/_components/ui/section';
import type { ResultView } from '@/lib/server/signing/result-view';
import { momentWords } from '@/lib/wording/dates';

/** Every paper that was made of this version, with who signed it; earlier ones stay. */
export function PapersPart({ view: { version, standing, school } }: { readonly view: ResultView }) {
  if (standing.papers.length === 0) return null;
  return (
    <Section id="papers" title="Papers" aside={standing.papers.length === 1 ? 'one' : String(standing.papers.length)}>
      <ul className="rows">
        {standing.papers.map((paper) => (
          <li key={paper.id}>
            <a href={`/assessments/${version.id}/paper.pdf?number=${paper.number}`}><b>{paper.number}</b> (PDF)</a>
            <span className="small">{stateOf(paper)}</span>
            {paper.signatures.map((signature) => <span key={signature.part} className="small muted">{signature.part === 'preparer' ? 'Prepared' : 'Checked'} and signed by {signature.signerName}, {momentWords(signature.at, school)}</span>)}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function stateOf({ state, replacedAt }: ResultView['standing']['papers'][number]): string {
  if (replacedAt !== null) return 'replaced, void';
  return state === 'signed' ? 'signed by both' : 'waits for the officer’s signature';
}
