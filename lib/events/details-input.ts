import { z } from 'zod';
import type { Choice } from '@/lib/forms/choices';
import { listOf, optionalText } from '@/lib/forms/fields';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import { CHARGING_THERE, DAMAGED_THERE, DETECTION_THERE, HALL_SHARED, OVERNIGHT, SAID, TRAVEL_WAYS } from './choices';
import { TARGET_FIELDS } from './event-input';

const CHOOSE = 'Choose one of the list';
const LONGEST = 400;
const words = () => optionalText(LONGEST);
/** One of a few, or left open: then null. */
function orOpen<const Id extends string>(choices: readonly Choice<Id>[]) {
  return z.string().optional().transform((value, context): Id | null => {
    if (value === undefined || value === '') return null;
    const chosen = choices.find(({ id }) => id === value);
    if (chosen !== undefined) return chosen.id;
    context.addIssue({ code: 'custom', message: CHOOSE, input: value });
    return z.NEVER;
  });
}
const number = (unit: string) => optionalTypedNumber({ least: 1, most: 500, unit, whole: true });

/** What the venue knows best; its own staff are asked the same by a link. */
export const VENUE_INPUT_FIELDS = {
  alarm: words(),
  detection: orOpen(DETECTION_THERE), detectionNote: words(),
  hall: orOpen(HALL_SHARED), hallNote: words(),
  chargingPlace: words(), chargingAtOnce: number('packs'), chargingCircuit: words(),
  damagedPlace: words(),
  agreed: listOf(z.string()), providesNote: words(),
};

export const ChangeVenueSchema = z.object({
  ...TARGET_FIELDS, ...VENUE_INPUT_FIELDS,
  charging: orOpen(CHARGING_THERE), damaged: orOpen(DAMAGED_THERE), night: orOpen(OVERNIGHT), nightPlace: words(),
  brings: listOf(z.string()), bringsNote: words(),
});

const said = () => orOpen(SAID);

export const ChangeTravelSchema = z.object({
  ...TARGET_FIELDS,
  way: orOpen(TRAVEL_WAYS),
  vehicle: words(), stops: words(), case: said(), leads: said(), neverWarm: said(), apart: said(), plan: said(), twoCheck: said(),
  carrier: words(), carrierAsked: said(), cabinOnly: said(), terminals: said(), tested: said(), approved: said(), approvalNote: words(), flyers: number('people'),
});
