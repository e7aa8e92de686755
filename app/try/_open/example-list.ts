import badStore from '@/public/examples/bad-store.json';
import goodHall from '@/public/examples/good-hall.json';
import ordinaryClassroom from '@/public/examples/ordinary-classroom.json';
import type { WholeDocument } from '../_state/whole-document';

/** A room to try, part of the page itself: choosing it asks the network for nothing. */
export interface Example { readonly id: string; readonly title: string; readonly about: string; readonly whole: WholeDocument }

export const examples: readonly Example[] = [
  { id: 'good-hall', title: 'Good hall', about: 'A large sports hall, charging by an outside door, one pack to a box, the store outdoors.', whole: goodHall },
  { id: 'ordinary-classroom', title: 'Ordinary classroom', about: 'Windows, wooden tables with tiles, some bags, a cupboard in the room. Most schools.', whole: ordinaryClassroom },
  { id: 'bad-store', title: 'Bad store', about: 'A small store without windows on the way out; charging overnight on carpet.', whole: badStore },
];

export function exampleById(id: string | null | undefined): Example | undefined {
  return examples.find((example) => example.id === id);
}
