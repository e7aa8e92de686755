import { VENUE_CAUTION } from '@/lib/wording/caution';
import type { Paper } from '../paper';
import type { EventFacts } from './facts';

type Head = Pick<Paper, 'kind' | 'number' | 'format' | 'language' | 'author' | 'madeAt' | 'fingerprint' | 'verifyAt' | 'twinAt' | 'caution'>;

/** What all papers of an event have alike. */
export function eventPaperHead(facts: EventFacts, kind: keyof EventFacts['readAt']): Head {
  const { number, format, language, school, madeAt, fingerprint, verifyAt, readAt } = facts;
  return { kind, number, format, language, author: school.name, madeAt, fingerprint, verifyAt, twinAt: readAt[kind], caution: VENUE_CAUTION };
}
