import type { Content } from '../model';
import { type ContentFault, idFaults, must } from './fault';

/** Pages that leave out a question, change the order, or mix sections. An edition without pages has none at fault. */
export function pageFaults({ pages, questions }: Content): readonly ContentFault[] {
  if (pages === undefined) return [];
  const sectionOf = new Map(questions.map(({ id, section }) => [id, section]));
  const placed = pages.flatMap((page) => page.questions);
  return [
    ...idFaults('pages', pages),
    ...must(placed.join() === questions.map(({ id }) => id).join(), 'pages', 'must hold every question once, in the order of the questions'),
    ...pages.flatMap((page) =>
      must(new Set(page.questions.map((id) => sectionOf.get(id))).size === 1, `page ${page.id}`, 'mixes sections, or holds a question that is not there')),
  ];
}
