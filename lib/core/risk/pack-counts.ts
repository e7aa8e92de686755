import type { Area, PackCount } from '@/lib/content/model';
import { numberInput, stateOf, type Venue } from '@/lib/core/answers/venue';

/** A pack is whole and there is at least one: halves round up (amendment A41). */
const whole = (count: number): number => Math.max(1, Math.floor(count + 0.5));

/**
 * How many packs burn in a branch, from what contains them and how many touch (packCountRule, A21, A40).
 * `not sure` counts as absent: nobody may rely on a box that may not be there.
 * @returns whole packs, 1 or more
 */
export function packsThatBurn(venue: Venue, count: PackCount, area: Area): number {
  switch (count) {
    case 'one': return 1;
    case 'lot': return whole(area === 'storage' ? storageLot(venue) : chargingLot(venue));
    case 'damaged': return whole(fromContainment(venue, 'damaged-apart', numberInput(venue, 'packsPerLotStorage')));
    case 'damagedAll': return whole(stateOf(venue, 'damaged-apart') === 'in place' ? numberInput(venue, 'damagedPacks') : numberInput(venue, 'packsStored'));
    case 'all': return whole(numberInput(venue, area === 'storage' ? 'packsStored' : 'packsOnTable'));
    case 'transit': return whole(fromContainment(venue, 'travel-box', numberInput(venue, 'packsPerTrip')));
  }
}

function chargingLot(venue: Venue): number {
  return Math.max(lotInItsBox(venue), joinedOnOneOutput(venue));
}

/** Packs joined on one output drive their charge into the one that fails, whatever is around each. */
function joinedOnOneOutput(venue: Venue): number {
  // the first edition does not ask for it
  const joined = venue.inputs.has('packsPerOutput') ? numberInput(venue, 'packsPerOutput') : 1;
  return joined > 1 ? Math.min(openSpread(venue), joined) : 1;
}

function lotInItsBox(venue: Venue): number {
  const touching = numberInput(venue, 'packsPerLotCharging');
  const box = stateOf(venue, 'charge-box');
  if (box === 'in place') return 1;
  if (box === 'partly' || stateOf(venue, 'charge-bag') === 'in place') return Math.min(2, touching);
  return Math.min(openSpread(venue), touching);
}

const storageLot = (venue: Venue): number => fromContainment(venue, 'store-lots', numberInput(venue, 'packsPerLotStorage'));

function fromContainment(venue: Venue, control: string, touching: number): number {
  const state = stateOf(venue, control);
  if (state === 'in place') return 1;
  return Math.min(state === 'partly' ? 2 : openSpread(venue), touching);
}

function openSpread(venue: Venue): number {
  const constant = venue.content.constants.find((one) => one.id === 'openSpread');
  if (constant === undefined) throw new Error('the content has no openSpread');
  return constant.value;
}
