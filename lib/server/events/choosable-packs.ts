import 'server-only';
import type { Addable, Choosable } from '@/lib/events/packs-input';
import { labelKey } from '@/lib/packs/pack';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { isHere, type PackState } from '@/lib/packs/states/pack-states';
import { checkedPack } from './check-facts';

/** Whether a pack could be packed as it is: in use, checked, and nothing stops it. */
export function isReady(limits: SchoolPackLimits, listed: ListedPack): boolean {
  const { state, damaged, stopped, lastCheckAt } = checkedPack(limits, listed);
  return state === 'in-use' && !damaged && stopped === null && lastCheckAt !== null;
}

/** A pack of the register as the list of an event offers it. */
export function choosable(limits: SchoolPackLimits, listed: ListedPack): Choosable {
  const { id, label } = listed.pack;
  return { id, label, key: labelKey(label), ready: isReady(limits, listed) };
}

/** The same where one is added by its label: with why it stays here. */
export function addable(limits: SchoolPackLimits, listed: ListedPack): Addable {
  return { ...choosable(limits, listed), here: isHere(listed.pack.state), stays: whyItStays(limits, listed) };
}

const STAYS: Readonly<Partial<Record<PackState, string>>> = {
  isolated: 'is isolated and does not go along',
  retired: 'is retired and does not go along',
  'handed-over': 'was handed over: by the register it is not here any more',
};

function whyItStays(limits: SchoolPackLimits, listed: ListedPack): string | null {
  return STAYS[listed.pack.state] ?? (checkedPack(limits, listed).damaged ? 'was found damaged at its last check and does not go along' : null);
}
