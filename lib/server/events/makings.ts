import 'server-only';
import { createHash } from 'node:crypto';
import type { Signer } from '@/lib/papers/assessment/facts';
import type { EventFacts } from '@/lib/papers/event/facts';
import type { Paper } from '@/lib/papers/paper';
import { calendarDay } from '@/lib/wording/dates';
import { shortFingerprint } from '../papers/document-number';
import { publicAddress } from '../people/public-address';
import { type EventMakings, eventFacts } from './event-facts';
import type { EventInFull } from './event-in-full';
import { EVENT_PAPERS, type EventPaperKind } from './paper-kinds';

/** Who signs the papers of an event. */
export interface EventSigners { readonly preparer: Signer; readonly officer: Signer }

/** Stands where the number will: it is given when the file is made. */
const NUMBER_LATER = 'number given when made';

/**
 * The facts of the papers under a number; their fingerprint is of all but number and moment.
 * @param address whole addresses of our pages; left out, those under which the person who asks reached us
 */
export async function eventFactsFor(full: EventInFull, { preparer, officer }: EventSigners, number: string, address: (path: `/${string}`) => Promise<string> = publicAddress): Promise<EventFacts> {
  const at = (kind: EventPaperKind): Promise<string> => address(`/events/${full.event.id}/papers/${kind}`);
  const makings: EventMakings = {
    preparer, officer, number, fingerprint: '', verifyAt: await address(number === NUMBER_LATER ? '/verify' : `/verify?number=${number}`),
    readAt: { event: await at('event'), 'response card': await at('response-card'), 'pack list': await at('pack-list'), briefing: await at('briefing') },
  };
  const facts = eventFacts(full, makings);
  return { ...facts, fingerprint: fingerprintOf(facts) };
}

function fingerprintOf({ content, ...facts }: EventFacts): string {
  const said = { ...facts, content: content.version, number: '', verifyAt: '', readAt: '', madeAt: '', madeOn: '' };
  return shortFingerprint(createHash('sha256').update(JSON.stringify(said), 'utf8').digest('hex'));
}

/** A paper as it would be made now, but for number and moment: the same all day, so that what was read can be held to what is signed. */
export async function previewOf(full: EventInFull, signers: EventSigners, kind: EventPaperKind): Promise<Paper> {
  const facts = await eventFactsFor(full, signers, NUMBER_LATER);
  return EVENT_PAPERS[kind].make({ ...facts, madeAt: `${calendarDay(full.now, full.school.timeZone)}T00:00:00.000Z` });
}
