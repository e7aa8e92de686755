import { z } from 'zod';
import { isDay } from '@/lib/forms/day-field';
import { line, optionalLine, optionalText } from '@/lib/forms/fields';
import { SHOWN_ACTIONS } from './actions';

const NO_DAY = 'Choose the day by which it is to be done';
const NO_OWNER = 'Choose who does it, or write the name of somebody without an account';

const WHO_AND_WHEN = {
  title: line('Write what is to be done'),
  details: optionalText(1000).transform((text) => text ?? ''),
  ownerId: optionalLine(),
  ownerName: optionalLine(100),
  dueOn: line(NO_DAY, 10).refine(isDay, NO_DAY),
};

/** Somebody with an account, or a name; one of them has to be there. */
const hasOwner = { check: (input: { readonly ownerId: string | null; readonly ownerName: string | null }): boolean => input.ownerId !== null || input.ownerName !== null, fault: { error: NO_OWNER, path: ['ownerId'] } };

/** An action out of a suggestion, a stop condition, or nothing but what somebody writes. */
export const AddActionSchema = z.object({ versionId: line('No assessment was named'), controlId: optionalLine(), stopId: optionalLine(), ...WHO_AND_WHEN }).refine(hasOwner.check, hasOwner.fault);
export type AddActionInput = z.output<typeof AddActionSchema>;

const OF_ACTION = { actionId: line('No action was named') };
export const ChangeActionSchema = z.object({ ...OF_ACTION, revision: z.coerce.number().int(), ...WHO_AND_WHEN }).refine(hasOwner.check, hasOwner.fault);
export type ChangeActionInput = z.output<typeof ChangeActionSchema>;

const note = (missing: string) => line(missing, 1000);
export const DoneActionSchema = z.object({ ...OF_ACTION, note: note('Write what was done, so that somebody else can look at it') });
export const DropActionSchema = z.object({ ...OF_ACTION, note: note('Write why it is dropped') });
export const OpenActionSchema = z.object({ ...OF_ACTION, note: note('Write why it is open again') });
export type ActionNoteInput = z.output<typeof DoneActionSchema>;

/** Search and filter as an address holds them; what cannot be read narrows nothing. */
export const ActionQuerySchema = z.object({ q: z.string().trim().max(200).catch(''), state: z.enum(SHOWN_ACTIONS).catch('open') });
export type ActionQuery = z.output<typeof ActionQuerySchema>;
