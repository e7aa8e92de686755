import type { Content } from '@/lib/content/model';
import type { ActionResult } from '@/lib/core/result';
import { hours } from '@/lib/wording/measures';
import { rounded } from '@/lib/wording/numbers';

/** What an action costs: "2 h, no money: 2 points". */
export function costWords(content: Content, action: ActionResult): string {
  const band = content.moneyBands.find((one) => one.band === action.moneyBand);
  const money = band === undefined || band.points === 0 ? 'no money' : band.title;
  return `${hours(action.hours)}, ${money}: ${rounded(action.effort)} ${action.effort === 1 ? 'point' : 'points'}`;
}

/** The stop conditions that an action settles, as the rest of a sentence. */
export function settledWords(content: Content, { clearsStops }: ActionResult): string {
  return clearsStops.map((id) => lowerFirst(content.stops.find((stop) => stop.id === id)?.title ?? id)).join('; ');
}

const lowerFirst = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);
