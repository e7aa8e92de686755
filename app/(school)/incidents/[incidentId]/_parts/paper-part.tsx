import { ButtonLink } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import type { IncidentRecord } from '@/lib/incidents/incident';
import type { IncidentPapers } from '@/lib/server/incidents/incident-paper';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

interface PaperPartProps {
  readonly incident: IncidentRecord;
  readonly papers: IncidentPapers;
  /** the one that counts; null when it is still to be signed */
  readonly current: IncidentPapers[number] | null;
  readonly style: DateStyle;
  readonly maySign: boolean;
}

/** The signed papers of an incident; earlier ones stay. */
export function PaperPart({ incident: { id, state }, papers, current, style, maySign }: PaperPartProps) {
  const toSign = state === 'closed' && current === null;
  return (
    <Section id="paper" title="Signed paper">
      {papers.length === 0 ? null : (
        <ul className="rows">
          {papers.map((paper) => (
            <li key={paper.id}>
              <a href={`/incidents/${id}/paper.pdf?number=${paper.number}`}><b>{paper.number}</b> (PDF)</a>
              <span className="small">{paper.replacedAt !== null ? 'replaced, void' : paper === current ? 'signed' : 'signed before it was opened again'}</span>
              {paper.signatures.map((signature) => <span key={signature.part} className="small muted">Signed by {signature.signerName}, {momentWords(signature.at, style)}</span>)}
            </li>
          ))}
        </ul>
      )}
      {current === null ? null : <p className="row"><ButtonLink href={`/incidents/${id}/paper`}>Read it as a page</ButtonLink></p>}
      {toSign ? <p>{maySign ? 'It is closed, and its paper is still to be signed.' : 'It is closed; the safety officer has still to sign its paper.'}</p> : null}
      {state === 'closed' ? null : <p className="muted">The safety officer signs a paper of it once it is closed.</p>}
      {toSign && maySign ? <p className="row"><ButtonLink kind="main" href={`/incidents/${id}/sign`}>Read the paper and sign it</ButtonLink></p> : null}
    </Section>
  );
}
