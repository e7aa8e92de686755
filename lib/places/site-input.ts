import { z } from 'zod';
import { line, oneOf, optionalLine, optionalText } from '@/lib/forms/fields';
import { SITE_KINDS } from './place';

/** What is asked about a site. */
export const SiteInputSchema = z.object({
  name: line('Enter a name, such as Main hall or Riverside sports centre', 100),
  kind: oneOf(SITE_KINDS, 'Say whether it is your own school'),
  address: line('Enter the address as you would say it to the fire service: street, gate, room', 200),
  emergencyNumber: optionalLine(30).refine((text) => text === null || text.replace(/\D/gu, '').length >= 3, 'Enter the number as it is dialled there: at least 3 digits'),
  meetingPlace: optionalLine(200),
  secondMeetingPlace: optionalLine(200),
  keyHolder: optionalLine(100),
  keyHolderPhone: optionalLine(30),
  notes: optionalText(),
});
