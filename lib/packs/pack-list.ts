import { DAY_MS } from '@/lib/units/time';
import { checkInForce, daysSince } from './checks/check-age';
import type { CheckRecord } from './checks/check-record';
import { labelKey, type Pack } from './pack';
import { SETTLED_PLACES } from './pack-history';
import type { SchoolPackLimits } from './school-rules';
import { blockedUses, blockedWords } from './states/blocked-uses';
import { isHere, isPackState, type PackState } from './states/pack-states';

/** A pack as the list shows it, with what is known of it last. */
export interface ListedPack {
  readonly pack: Pack;
  readonly lastCheck: Pick<CheckRecord, 'at' | 'result' | 'measures'> | null;
  /** of an isolated pack: where it is, as somebody said; null until somebody has */
  readonly isolatedAt: string | null;
  readonly isolatedSince: Date | null;
}

/** `now`: a person has to act; `wait`: somebody should look at it; null: nothing. */
export interface Need { readonly urgency: 'now' | 'wait'; readonly words: string }

/** Our judgement (issue: damaged packs wait a week at most), days. */
const LONGEST_WAIT = 7;

/** What a pack needs of a person, most urgent first found. */
export function needOf(limits: SchoolPackLimits, listed: ListedPack, now: Date): Need | null {
  const { pack, lastCheck, isolatedAt, isolatedSince } = listed;
  if (pack.state === 'isolated') {
    if (isolatedAt === null) return { urgency: 'now', words: 'Say where it is' };
    if (!SETTLED_PLACES.includes(isolatedAt)) return { urgency: 'now', words: 'Not at the outdoor spot' };
    const days = Math.floor((now.getTime() - (isolatedSince ?? pack.stateSince).getTime()) / DAY_MS);
    return { urgency: days > LONGEST_WAIT ? 'now' : 'wait', words: days === 0 ? 'Isolated today' : `Waits ${days} ${days === 1 ? 'day' : 'days'} for collection` };
  }
  if (pack.state === 'retired') return { urgency: 'wait', words: 'Waits for the collection point' };
  if (!isHere(pack.state)) return null;
  if (lastCheck === null) return { urgency: 'wait', words: 'Not checked yet' };
  if (checkInForce(limits, lastCheck, now) === null) return { urgency: 'wait', words: `Checked ${daysSince(lastCheck.at, now)} days ago: check it again` };
  const blocked = blockedWords(blockedUses(limits, pack, lastCheck).uses);
  return blocked === null ? null : { urgency: 'wait', words: blocked };
}

export interface PackFilter {
  /** part of a label, batch, maker or place */
  readonly find: string;
  /** null: all that are still here */
  readonly state: PackState | 'all' | null;
}

/** Reads a filter out of an address; whatever is not known counts as not given. */
export function readPackFilter(query: { readonly find?: string | string[]; readonly state?: string | string[] }): PackFilter {
  const [find = ''] = [query.find ?? ''].flat();
  const [state = ''] = [query.state ?? ''].flat();
  return { find: find.trim().slice(0, 80), state: state === 'all' || isPackState(state) ? state : null };
}

/** The packs a filter shows: those that press first, then those that wait, then by label with numbers as numbers. */
export function filteredPacks(limits: SchoolPackLimits, packs: readonly ListedPack[], filter: PackFilter, now: Date): readonly ListedPack[] {
  const wanted = labelKey(filter.find);
  const shown = packs.filter(({ pack }) => isShown(pack, filter.state) && matches(pack, wanted));
  const rank = (listed: ListedPack): number => ({ now: 0, wait: 1, none: 2 })[needOf(limits, listed, now)?.urgency ?? 'none'];
  return [...shown].sort((one, other) => rank(one) - rank(other) || BY_LABEL.compare(one.pack.label, other.pack.label));
}

const BY_LABEL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function isShown(pack: Pack, state: PackFilter['state']): boolean {
  if (state === 'all') return true;
  return state === null ? isHere(pack.state) : pack.state === state;
}

function matches(pack: Pack, wanted: string): boolean {
  return wanted === '' || [pack.label, pack.batch, pack.maker, pack.seller, pack.place].some((text) => text !== null && labelKey(text).includes(wanted));
}
