import { can } from '@/lib/access/can';
import type { PackFact, PackNeed, TodayFacts } from './facts';
import { listed, now, soon, type TodayItem } from './item';

const LEAVE = 'Warm, hissing, smelling or growing: everybody away, out, alarm, call.';

/** Packs that need somebody: those of which nobody knows where they lie come first of all. */
export function packItems({ packs, role }: Pick<TodayFacts, 'packs' | 'role'>): readonly TodayItem[] {
  const of = (need: PackNeed): readonly PackFact[] => packs.filter((pack) => pack.need === need);
  const mayHandOver = can(role, 'pack.hand-over');
  return [
    ...group(of('say where'), (labels, few) => now({ id: 'packs-say-where', title: `Isolate now: say where ${labels} ${few ? 'is' : 'are'}`, why: `Marked isolated in the register only: nobody has said where it lies. ${LEAVE}`, ...door(of('say where'), 'isolated', 'Say where') })),
    ...group(of('wrong place'), (labels, few) => now({ id: 'packs-wrong-place', title: `${labels} ${few ? 'is' : 'are'} not at the outdoor spot`, why: `An isolated pack stays among people and other packs. ${LEAVE}`, ...door(of('wrong place'), 'isolated', 'See what to do') })),
    ...(mayHandOver ? group(of('waits too long'), (labels, few) => now({ id: 'packs-waiting-long', title: `Have ${labels} collected`, why: `${few ? of('waits too long')[0]?.words ?? '' : 'They wait for collection'}. A week is the longest a damaged pack should wait.`, ...door(of('waits too long'), 'isolated', 'Write the hand-over') })) : []),
    ...(mayHandOver ? group(of('waits'), (labels, few) => soon({ id: 'packs-waiting', title: `${labels} ${few ? 'waits' : 'wait'} for collection`, why: waitWords(of('waits')), ...door(of('waits'), 'isolated', few ? 'Open it' : 'Show them') })) : []),
    ...group(of('never checked'), (labels, few) => soon({ id: 'packs-unchecked', title: `Check ${labels}`, why: `${few ? 'It was' : 'They were'} never checked, so nobody charges, flies or carries ${few ? 'it' : 'them'}.`, ...door(of('never checked'), null, few ? 'Check it' : 'Show them') })),
    ...group(of('on watch'), (labels, few) => soon({ id: 'packs-watch', title: `${labels} ${few ? 'is' : 'are'} on watch`, why: of('on watch').map(({ label, words }) => `${label}: ${words.charAt(0).toLowerCase()}${words.slice(1)}`).join('. '), ...door(of('on watch'), 'watch', few ? 'Open it' : 'Show them') })),
  ];
}

function group(packs: readonly PackFact[], make: (labels: string, few: boolean) => TodayItem): readonly TodayItem[] {
  return packs.length === 0 ? [] : [make(listed(packs.map(({ label }) => label)), packs.length === 1)];
}

function door(packs: readonly PackFact[], state: string | null, verb: string): Pick<TodayItem, 'href' | 'verb'> {
  const [only] = packs;
  if (packs.length === 1 && only !== undefined) return { href: `/packs/${only.id}`, verb };
  return { href: state === null ? '/packs' : `/packs?state=${state}`, verb: 'Show them' };
}

function waitWords(packs: readonly PackFact[]): string {
  return packs.map(({ label, words }) => (packs.length === 1 ? words : `${label}: ${words.charAt(0).toLowerCase()}${words.slice(1)}`)).join('. ');
}
