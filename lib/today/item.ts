/** `now`: a person is needed now, the only ones drawn in ember. `soon`: to be seen to, and nothing presses. */
export type Urgency = 'now' | 'soon';

/** One thing that needs the reader. */
export interface TodayItem {
  readonly id: string;
  readonly urgency: Urgency;
  readonly title: string;
  readonly why: string;
  readonly href: `/${string}`;
  /** what the button says */
  readonly verb: string;
}

export const now = (item: Omit<TodayItem, 'urgency'>): TodayItem => ({ ...item, urgency: 'now' });
export const soon = (item: Omit<TodayItem, 'urgency'>): TodayItem => ({ ...item, urgency: 'soon' });

/** Names in a sentence: "W-03, W-08 and W-14"; of many only the first few. */
export function listed(names: readonly string[], most = 4): string {
  if (names.length > most) return `${names.slice(0, most - 1).join(', ')} and ${names.length - most + 1} others`;
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** "today", "in 3 days", "3 days ago". */
export function daysWords(days: number): string {
  if (days === 0) return 'today';
  const words = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  return days > 0 ? `in ${words}` : `${words} ago`;
}
