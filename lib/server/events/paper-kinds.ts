import { briefingSheet } from '@/lib/papers/briefing-sheet';
import { eventPaper } from '@/lib/papers/event-paper';
import type { EventFacts } from '@/lib/papers/event/facts';
import { packList } from '@/lib/papers/pack-list';
import type { Paper } from '@/lib/papers/paper';
import { responseCard } from '@/lib/papers/response-card';

/** The papers of an event by their kind in the database, which is also how they stand in an address. */
export const EVENT_PAPERS = {
  event: { title: 'File for the venue', hint: 'All of it in one file, signed by whoever prepared it and by the safety officer', make: eventPaper },
  'response-card': { title: 'Response card', hint: 'One page to hang up where people leave', make: responseCard },
  'pack-list': { title: 'Pack list', hint: 'To tick off when packs are loaded and brought back', make: packList },
  briefing: { title: 'Briefing for students', hint: 'What everybody must know about packs, with a place for initials', make: briefingSheet },
} as const satisfies Readonly<Record<string, { readonly title: string; readonly hint: string; readonly make: (facts: EventFacts) => Paper }>>;
export type EventPaperKind = keyof typeof EVENT_PAPERS;
export const EVENT_PAPER_KINDS = ['event', 'response-card', 'pack-list', 'briefing'] as const satisfies readonly EventPaperKind[];

export function isEventPaperKind(word: string): word is EventPaperKind {
  return Object.hasOwn(EVENT_PAPERS, word);
}
