import { z } from 'zod';
import type { LineAcceptance } from '@/lib/events/check/check-event';
import { ADULT_PARTS } from '@/lib/events/choices';
import { EventDetailsSchema, ScheduleSchema } from '@/lib/events/details';
import type { EventAdult, EventRecord } from '@/lib/events/event';
import type { ListedEvent } from '@/lib/events/event-list';
import { eventStateOf } from '@/lib/events/standing';
import { idsOf } from '@/lib/forms/choices';
import type { Prisma } from '../generated/sqlite/client';

/** What every reading of a whole event needs. */
export const WITH_ALL = {
  site: { select: { name: true, kind: true } },
  packs: { orderBy: { packId: 'asc' }, select: { packId: true } },
  adults: { orderBy: { position: 'asc' } },
  acceptances: { where: { endedAt: null }, orderBy: [{ at: 'asc' }, { id: 'asc' }] },
} as const satisfies Prisma.EventInclude;

type EventRow = Prisma.EventGetPayload<{ include: typeof WITH_ALL }>;

/** Throws when the row does not hold what this program writes. */
export function eventOfRow(row: EventRow): EventRecord {
  const { id, title, siteId, startsAt, endsAt, teams, people, spectators, contentVersion, preparedById, preparedByName, officerId, submittedAt, returnedReason, signedAt, withdrawnAt, withdrawnReason, cancelledAt, cancelledReason, copiedFromId, revision } = row;
  return {
    id, title, siteId, startsAt, endsAt, teams, people, spectators, contentVersion, preparedById, preparedByName, officerId, submittedAt, returnedReason, signedAt, withdrawnAt, withdrawnReason, cancelledAt, cancelledReason, copiedFromId, revision,
    state: eventStateOf(row.state), siteName: row.site.name, siteKind: row.site.kind,
    schedule: ScheduleSchema.parse(JSON.parse(row.scheduleJson)), details: EventDetailsSchema.parse(JSON.parse(row.detailsJson)),
    adults: row.adults.map(adultOfRow), packIds: row.packs.map(({ packId }) => packId), acceptances: row.acceptances.map(acceptanceOfRow),
  };
}

const Parts = z.array(z.enum(idsOf(ADULT_PARTS)));
const adultOfRow = ({ name, partsJson, phone }: EventRow['adults'][number]): EventAdult => ({ name, phone, parts: Parts.parse(JSON.parse(partsJson)) });
const acceptanceOfRow = ({ lineId, words, reason, byName, at }: EventRow['acceptances'][number]): LineAcceptance => ({ lineId, words, reason, byName, at });

/** What a row of the list needs. */
export const LISTED = { site: { select: { name: true } }, _count: { select: { packs: true } } } as const satisfies Prisma.EventInclude;

export function listedOfRow({ id, title, state, startsAt, endsAt, teams, people, preparedByName, site, _count }: Prisma.EventGetPayload<{ include: typeof LISTED }>): ListedEvent {
  return { id, title, state: eventStateOf(state), startsAt, endsAt, teams, people, preparedByName, siteName: site.name, packs: _count.packs };
}
