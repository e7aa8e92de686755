import 'server-only';
import { can } from '@/lib/access/can';
import { signerDetails } from '@/lib/db/assessments/paper-material';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import { type JudgedLine, openLines } from '@/lib/events/check/check-event';
import { isOver } from '@/lib/events/event-list';
import { isOpen } from '@/lib/events/standing';
import { type EventStandingWords, eventStandingWords } from '@/lib/events/standing-words';
import { dayWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { energyOf } from './check-facts';
import type { EventInFull } from './event-in-full';
import { eventInFull } from './gather';
import { papersOfEvent } from './read-papers';
import { linksOfEvent, type SharedLink } from './share';
import { mayOnEvent } from './sign-events';
import { whenWords } from './when-words';

/** What an event's page is drawn from. */
export interface EventView extends EventInFull {
  readonly when: string;
  readonly words: EventStandingWords;
  readonly open: readonly JudgedLine[];
  readonly totalWh: number;
  readonly packsWithoutEnergy: number;
  readonly papers: Awaited<ReturnType<typeof papersOfEvent>>;
  readonly shared: readonly SharedLink[];
  readonly may: { readonly change: boolean; readonly handOver: boolean; readonly accept: boolean; readonly decide: boolean; readonly sign: boolean; readonly withdraw: boolean; readonly reopen: boolean; readonly cancel: boolean; readonly copy: boolean; readonly share: boolean; readonly describe: boolean; readonly papers: boolean; readonly assessment: boolean };
}

/** An event of the actor's school with what the actor may do with it now, or null. */
export async function eventView(actor: Actor, eventId: string): Promise<EventView | null> {
  const full = await eventInFull(actor, eventId);
  if (full === null) return null;
  const { event, school, now, packs, limits, site } = full;
  const scope = schoolScope(actor);
  const [waiting, officer, papers, shared] = await Promise.all([waitingPaperOf(database(), scope, { kind: 'event', eventId }), event.officerId === null ? null : signerDetails(database(), scope, event.officerId), papersOfEvent(actor, eventId), linksOfEvent(actor, eventId)]);
  const [over, open, energies] = [isOver(event, now), openLines(full.lines).map((line) => ({ ...line, link: reachable(actor, line.link) })), packs.map((pack) => energyOf(limits, pack))];
  const day = (at: Date | null, reason: string | null) => (at === null ? null : { on: dayWords(at, school), reason: reason ?? '' });
  const may = (action: Parameters<typeof mayOnEvent>[1]): boolean => mayOnEvent(actor, action, event);
  const [isDraft, isWith] = [isOpen(event.state), event.state === 'with-officer'];
  return {
    ...full, open, papers, shared, when: whenWords(event, school),
    totalWh: energies.reduce<number>((sum, one) => sum + (one ?? 0), 0), packsWithoutEnergy: energies.filter((one) => one === null).length,
    words: eventStandingWords({
      state: event.state, preparer: event.preparedByName, officer: officer?.name ?? null, preparerSigned: waiting !== null, open: open.length, over, returnedReason: event.returnedReason,
      withdrawn: day(event.withdrawnAt, event.withdrawnReason), cancelled: day(event.cancelledAt, event.cancelledReason),
    }),
    may: {
      change: isDraft && may('event.change'), handOver: (isDraft || (isWith && waiting === null)) && may('event.submit'), accept: (isDraft || isWith) && may('event.accept-line'),
      decide: isWith && may('event.return'), sign: isWith && waiting !== null && open.length === 0 && event.officerId === actor.personId && may('event.sign-as-officer'),
      withdraw: event.state === 'signed' && may('event.withdraw'), reopen: event.state === 'signed' && !over && may('event.change') && event.preparedById === actor.personId, cancel: event.state !== 'cancelled' && !over && may('event.cancel'), copy: can(actor.role, 'event.begin'),
      share: event.state === 'signed' && can(actor.role, 'link.share'), describe: isDraft && site.kind === 'away' && can(actor.role, 'link.share'), papers: can(actor.role, 'document.read'), assessment: can(actor.role, 'assessment.read'),
    },
  };
}

/** Nobody is led to a page that refuses them. */
function reachable({ role }: Actor, link: JudgedLine['link']): JudgedLine['link'] {
  if (link === null) return null;
  if (link.startsWith('/assessments/new')) return can(role, 'assessment.begin') ? link : null;
  if (link.startsWith('/assessments/')) return can(role, 'assessment.read') ? link : null;
  return link.startsWith('/places/') && !can(role, 'place.change') ? null : link;
}
