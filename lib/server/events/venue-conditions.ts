import 'server-only';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { venueControls } from '@/lib/events/details';
import type { EventConditionFact } from '@/lib/papers/event/facts';
import { stateWord } from '@/lib/wording/states';
import type { EventInFull } from './event-in-full';

/**
 * Returns what a place has to provide and whether it does: a venue by what it agreed to, our own hall by what its signed
 * assessment says of the control. What neither says does not stand.
 */
export function venueConditions({ event, content, site, rests }: Pick<EventInFull, 'event' | 'content' | 'site' | 'rests'>): readonly EventConditionFact[] {
  const scored = rests?.scored ?? null;
  const states = scored === null ? null : resolveVenue(scored.content, scored.document).states;
  return venueControls(event.details).flatMap((id) => content.controls.filter((control) => control.id === id).map(({ title }) => {
    if (site.kind !== 'own') return agreement(id, title, event.details.agreed.includes(id));
    const state = states?.get(id) ?? 'not sure';
    return { id, words: title, stands: state === 'in place' || state === 'not applicable', said: stateWord(state) };
  }));
}

/** Returns a condition as it was asked of somebody: agreed, or open until it is. */
export function agreement(id: string, words: string, agreed: boolean): EventConditionFact {
  return { id, words, stands: agreed, said: agreed ? 'agreed' : 'OPEN' };
}
