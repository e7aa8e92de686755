import { VENUE_CAUTION } from '@/lib/wording/caution';
import type { Paper } from '../paper';
import type { EventFacts } from './facts';

type Head = Pick<Paper, 'kind' | 'number' | 'format' | 'language' | 'author' | 'madeAt' | 'fingerprint' | 'verifyAt' | 'twinAt' | 'caution' | 'dialled'>;

/** What all papers of an event have alike. */
export function eventPaperHead(facts: EventFacts, kind: keyof EventFacts['readAt']): Head {
  const { number, format, language, school, madeAt, fingerprint, verifyAt, readAt } = facts;
  return { kind, number, format, language, author: school.name, madeAt, fingerprint, verifyAt, twinAt: readAt[kind], caution: VENUE_CAUTION, dialled: numbersOf(facts) };
}

/** Every telephone number of the facts, each once. */
function numbersOf({ site, school, preparer, officer, adults, guidance }: EventFacts): readonly string[] {
  const written = [site.emergencyNumber, site.caretakerPhone, school.officerPhone, preparer.telephone, officer.telephone, ...adults.map(({ phone }) => phone)];
  const inTexts = [guidance.number, guidance.officerPhone].flatMap(({ words, set }) => (set ? [words] : []));
  return [...new Set([...written, ...inTexts].flatMap((number) => (number === null || number === '' ? [] : [number])))];
}
