import { z } from 'zod';
import { isDay } from '@/lib/forms/day-field';
import { line, oneOf } from '@/lib/forms/fields';

const LONGEST = 4000;
const incidentId = line('The form has lost its incident');
const reason = line('Write why; others have to understand it later', 400);

/** What people add by hand; the others come with an act of the officer. */
export const ADDED_KINDS = ['cause', 'measure', 'report', 'note'] as const;

export const FollowUpSchema = z.object({ incidentId, kind: oneOf(ADDED_KINDS, 'Choose what you add'), text: line('Write it down', LONGEST) });
export const RiskSchema = z.object({ incidentId, risk: line('Choose the risk, or “None of them”', 80) });
export const CloseSchema = z.object({ incidentId, note: line('Write one sentence: what was learned', LONGEST) });
export const ReopenSchema = z.object({ incidentId, reason });
export const RemovePhotoSchema = z.object({ incidentId, photoId: line('The form has lost its photo'), reason });
export const CorrectiveActionSchema = z.object({
  incidentId,
  title: line('Write what is to be done'),
  ownerName: line('Write who does it'),
  dueOn: line('Choose the day it is due').refine(isDay, 'Write the date as year, month and day, such as 2026-11-25'),
});

/** Of a correction the fact's own fields are read by the fact. */
export const CorrectionSchema = z.looseObject({ incidentId, field: line('The form has lost its field'), reason });
export const AddPhotosSchema = z.looseObject({ incidentId });
