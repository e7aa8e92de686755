import { z } from 'zod';
import { line, optionalLine } from '@/lib/forms/fields';
import { VENUE_INPUT_FIELDS } from './details-input';

const token = line('Open your link again', 200);
const name = line('Enter your name and post', 100);

/** What the venue's own staff say of it, by a link. */
export const DescribeVenueSchema = z.object({
  token, name,
  revision: z.coerce.number().int(), siteRevision: z.coerce.number().int(),
  emergencyNumber: optionalLine(30).refine((text) => text === null || text.replace(/\D/gu, '').length >= 3, 'Enter the number as it is dialled there: at least 3 digits'),
  meetingPlace: optionalLine(200), secondMeetingPlace: optionalLine(200), keyHolder: optionalLine(100), keyHolderPhone: optionalLine(30),
  ...VENUE_INPUT_FIELDS,
});
export type DescribeVenueInput = z.output<typeof DescribeVenueSchema>;

/** Which part of the venue is described: one there already, or a new one. The fields of a part are read by lib/places. */
export const DescribeAreaTargetSchema = z.object({ token, byName: name, areaId: optionalLine(60), revision: z.coerce.number().int().default(0) });
