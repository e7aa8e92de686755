import type { OpenDocument } from '../_state/page-state';

/** A file name made of the document's id: letters, digits and hyphens. */
export function fileNameOf({ whole }: OpenDocument): string {
  const id = typeof whole['id'] === 'string' ? whole['id'] : 'assessment';
  const plain = id.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
  return `${plain === '' ? 'assessment' : plain}.json`;
}

/** The command that gives the numbers on the page. */
export function commandFor(open: OpenDocument): string {
  const untouched = open.source.kind === 'example' && !open.edited;
  const file = untouched ? `public/examples/${fileNameOf(open)}` : fileNameOf(open);
  return `npm run --silent score -- ${file}`;
}
