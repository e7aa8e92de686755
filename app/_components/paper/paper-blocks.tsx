import { SceneSvg } from '@/app/_components/charts/scene-svg';
import type { Block, Tone } from '@/lib/papers/paper';
import { PaperTable } from './paper-table';

/** Blocks of a paper, one after the other. */
export function PaperBlocks({ blocks }: { readonly blocks: readonly Block[] }) {
  return blocks.map((block, index) => <PaperBlock key={index} block={block} />);
}

interface Of<Kind extends Block['kind']> { readonly block: Extract<Block, { readonly kind: Kind }> }

const TONES: Readonly<Record<Tone, string | undefined>> = { plain: undefined, strong: 'strong', quiet: 'small muted', presses: 'press' };

function PaperBlock({ block }: { readonly block: Block }) {
  switch (block.kind) {
    case 'heading': return <h4>{block.text}</h4>;
    case 'text': return <p className={TONES[block.tone ?? 'plain']}>{block.text}</p>;
    case 'facts': return <Facts block={block} />;
    case 'list': return <List block={block} />;
    case 'table': return <PaperTable block={block} />;
    case 'figure': return <Figure block={block} />;
    case 'steps': return <Steps block={block} />;
    case 'initials': return <p>{block.caption} <span className="muted">On paper there are {block.places} places to fill in by hand.</span></p>;
    case 'notice': return <div className={block.presses === true ? 'notice now' : 'notice'}><p className="strong">{block.title}</p><p>{block.text}</p></div>;
  }
}

function Facts({ block }: Of<'facts'>) {
  return (
    <dl className="facts">
      {block.rows.map(({ name, value, under }, index) => (
        <div key={index}><dt>{name}</dt><dd>{value}{under === undefined ? null : <span className="small muted under">{under}</span>}</dd></div>
      ))}
    </dl>
  );
}

function List({ block }: Of<'list'>) {
  if (block.columns === 2) return <ul className="paper-short">{block.items.map(({ lead }) => <li key={lead}>{lead}</li>)}</ul>;
  const items = block.items.map(({ lead, text }, index) => <li key={index}><b>{lead}</b>{text === undefined ? null : ` ${text}`}</li>);
  return block.ordered === true ? <ol className="prose">{items}</ol> : <ul className="prose">{items}</ul>;
}

/** The drawing says nothing that the words do not say. */
function Steps({ block }: Of<'steps'>) {
  return (
    <ol className="paper-steps">
      {block.items.map(({ picture, lead, text }, index) => (
        <li key={index}><SceneSvg scene={picture} told={false} /><p><b>{index + 1} {lead}</b>{text === undefined ? null : ` ${text}`}</p></li>
      ))}
    </ol>
  );
}

/** The picture as it stands on the paper; on a narrow screen it is moved sideways by itself. */
function Figure({ block }: Of<'figure'>) {
  return (
    <figure className="fig">
      <div className="scroll" tabIndex={0} role="region" aria-label={`Picture: ${block.scene.title}`}><SceneSvg scene={block.scene} /></div>
      <figcaption>{block.scene.title} {block.caption}</figcaption>
    </figure>
  );
}
