import { eventItems } from './event-items';
import type { TodayFacts } from './facts';
import { firstSteps } from './first-steps';
import type { TodayItem } from './item';
import { packItems } from './pack-items';
import { paperItems, stillHolds } from './paper-items';
import { actionItems, incidentItems, sessionItems } from './season-items';

export interface Today {
  readonly title: string;
  /** what needs the reader now, in the order in which it is to be done */
  readonly now: readonly TodayItem[];
  readonly soon: readonly TodayItem[];
  /** false while a signed paper is suspended, has run out, or rests on an acceptance that has ended */
  readonly mayCharge: boolean;
}

/** What needs the reader: packs before papers, papers before plans. Only what presses is called now. */
export function todayOf(facts: TodayFacts): Today {
  const items = [...packItems(facts), ...paperItems(facts), ...incidentItems(facts), ...sessionItems(facts), ...actionItems(facts), ...eventItems(facts.events), ...firstSteps(facts)];
  const pressing = items.filter(({ urgency }) => urgency === 'now');
  return { title: titleOf(pressing.length, facts), now: pressing, soon: items.filter(({ urgency }) => urgency === 'soon'), mayCharge: facts.papers.every(({ standing }) => standing === null || stillHolds(standing)) };
}

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine'];

function titleOf(count: number, { setUp }: TodayFacts): string {
  if (count === 1) return 'One thing needs you now';
  if (count > 1) return `${NUMBERS[count] ?? String(count)} things need you now`;
  return setUp.packs === 0 || setUp.papers === 0 ? 'What to do first' : 'Nothing presses today';
}
