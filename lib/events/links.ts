import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { DAY_MS } from '@/lib/units/time';
import { type EventState, isOpen } from './standing';

export const LINK_DAYS = ['3', '7', '14', '30', '90'] as const;
export const LINK_PURPOSES = ['see-document', 'describe-venue'] as const;
export type LinkPurpose = (typeof LINK_PURPOSES)[number];

export const ShareSchema = z.object({
  eventId: line('No event was named'),
  purpose: z.enum(LINK_PURPOSES, { error: 'Choose what the link is for' }),
  forWhom: line('Enter who it is for, such as the name of the venue’s manager', 100),
  days: z.enum(LINK_DAYS, { error: 'Choose how long the link is to work' }).transform(Number),
});
export type ShareInput = z.output<typeof ShareSchema>;

export const TakeBackSchema = z.object({ eventId: line('No event was named'), linkId: line('No link was named') });

/** Until when a link made now can be used. */
export function linkEnd(madeAt: Date, days: number): Date {
  return new Date(madeAt.getTime() + days * DAY_MS);
}

export interface LinkState { readonly purpose: LinkPurpose; readonly expiresAt: Date; readonly revokedAt: Date | null; readonly eventState: EventState }

const NOT_OURS = 'This link is not one of ours. Perhaps a part of it is missing: copy it again, whole.';

/** Why a link does not work any more, or null while it does. One to a file works whatever became of the file: it says so. */
export function whyEnded(link: LinkState | null, purpose: LinkPurpose, now: Date): string | null {
  if (link === null || link.purpose !== purpose) return NOT_OURS;
  if (link.revokedAt !== null) return 'This link was taken back. Ask the person who sent it for another.';
  if (link.expiresAt <= now) return 'This link has ended. Ask the person who sent it for another.';
  if (purpose === 'describe-venue' && !isOpen(link.eventState)) return 'The file has gone to the safety officer meanwhile, or the event is over, so nothing can be changed here. Tell the person who sent you the link.';
  return null;
}
