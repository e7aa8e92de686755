import type { OpenDocument } from '../_state/page-state';
import { titleOf } from '../_state/whole-document';
import { exampleById } from './example-list';

/** Which room this is, and the way to another. */
export function RoomCrumb({ open }: { readonly open: OpenDocument }) {
  return (
    <>
      <a href="#other">Another room</a>
      <span>{titleOf(open.whole)}</span>
      <span>{originOf(open)}</span>
    </>
  );
}

function originOf({ source, edited }: OpenDocument): string {
  const from = source.kind === 'own' ? `from ${source.name}` : `the example “${exampleById(source.example)?.title ?? source.example}”`;
  return edited ? `${from}, changed here` : from;
}
