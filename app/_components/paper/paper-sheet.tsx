import type { Paper } from '@/lib/papers/paper';
import { CAUTION } from '@/lib/wording/caution';
import { PaperBlocks } from './paper-blocks';

interface PaperSheetProps {
  readonly paper: Paper;
  /** names the region, so that it can be reached and left */
  readonly label: string;
}

/** A paper on screen: the same data the file is made from, in the same order, so that both say the same. */
export function PaperSheet({ paper, label }: PaperSheetProps) {
  return (
    <section className="paper-sheet" aria-label={label} lang={paper.language.slice(0, 2) === 'en' ? paper.language : undefined}>
      <header>
        <h2>{paper.title}</h2>
        <p>{paper.subtitle}</p>
        <p className="small num">{paper.number} · {paper.fingerprint}</p>
      </header>
      <PaperBlocks blocks={paper.cover} />
      {paper.signatures.length === 0 ? null : (
        <dl className="paper-signers">
          {paper.signatures.map((place) => <div key={place.field}><dt>{place.title}</dt><dd>{place.name}{place.post === '' ? '' : `, ${place.post}`}</dd></div>)}
        </dl>
      )}
      {paper.sections.length === 0 ? null : <ol className="paper-contents small">{paper.sections.map((section) => <li key={section.id}><a href={`#paper-${section.id}`}>{section.title}</a></li>)}</ol>}
      {paper.sections.map((section, index) => (
        <section key={section.id} id={`paper-${section.id}`} aria-labelledby={`paper-${section.id}-title`} className="paper-section">
          <h3 id={`paper-${section.id}-title`}>{index + 1} {section.title}</h3>
          <PaperBlocks blocks={section.blocks} />
        </section>
      ))}
      <p className="small muted">{paper.caution ?? CAUTION}</p>
    </section>
  );
}
