import { can, mayEver } from '@/lib/access/can';
import type { ActionFact, TodayFacts } from './facts';
import { daysWords, listed, now, soon, type TodayItem } from './item';

/** A session that nobody closed within half a day was forgotten; our judgement. */
const FORGOTTEN_H = 12;
const WEEK_DAYS = 7;

/** Sessions that are open or did not begin, and what the last closing check left. */
export function sessionItems({ sessions, role }: Pick<TodayFacts, 'sessions' | 'role'>): readonly TodayItem[] {
  if (!can(role, 'session.log')) return [];
  return sessions.flatMap(({ id, place, state, began, hoursAgo, found }): readonly TodayItem[] => {
    const link = { href: `/sessions/${id}` as const };
    if (state === 'open' && hoursAgo >= FORGOTTEN_H) return [now({ id: `session-${id}`, title: `Close the session of ${began}`, why: `Nobody has made the closing check: are the chargers off, and the packs away, in ${place}?`, ...link, verb: 'Close it' })];
    if (state === 'open') return [soon({ id: `session-${id}`, title: `A session is open in ${place}`, why: `Since ${began}. Log the packs, then make the closing check.`, ...link, verb: 'Log packs' })];
    if (state === 'stopped') return [soon({ id: `session-${id}`, title: `Put right before the next session in ${place}`, why: `${began}: ${found.join('; ')}. Nobody charges or flies there until it is.`, ...link, verb: 'Open it' })];
    return found.length === 0 ? [] : [soon({ id: `session-${id}`, title: `Left over from the last session in ${place}`, why: `${began}: ${found.join('; ')}.`, ...link, verb: 'Open it' })];
  });
}

/** Incidents that nobody has closed; the officer reviews them. */
export function incidentItems({ incidents, role }: Pick<TodayFacts, 'incidents' | 'role'>): readonly TodayItem[] {
  if (!mayEver(role, 'incident.close')) return [];
  return incidents.map(({ id, name, state, daysOpen }): TodayItem => {
    const link = { href: `/incidents/${id}` as const };
    if (state === 'recorded') return now({ id: `incident-${id}`, title: `Review ${name}`, why: `Recorded ${daysWords(-daysOpen)}, and no officer has looked at it.`, ...link, verb: 'Review it' });
    return soon({ id: `incident-${id}`, title: `Close ${name}`, why: `In review. Recorded ${daysWords(-daysOpen)}.`, ...link, verb: 'Go on' });
  });
}

/** Actions: your own that are overdue press, so does any that settles a stop condition. */
export function actionItems({ actions, role }: Pick<TodayFacts, 'actions' | 'role'>): readonly TodayItem[] {
  const sees = can(role, 'action.change');
  const overdue = actions.filter(({ daysLeft }) => daysLeft < 0);
  const pressing = overdue.filter(({ isMine, ofStop }) => isMine || (ofStop && sees));
  const others = sees ? overdue.filter((action) => !pressing.includes(action)) : [];
  const near = actions.filter(({ isMine, daysLeft }) => isMine && daysLeft >= 0 && daysLeft <= WEEK_DAYS);
  return [
    ...pressing.map((action) => now({ ...actionLine(action), why: `Due ${action.due}, ${daysWords(action.daysLeft)}.${action.isMine ? '' : ` ${action.owner} does it.`}${action.ofStop ? ' It settles a stop condition.' : ''}` })),
    ...(others.length === 0 ? [] : [soon({ id: 'actions-of-others', title: others.length === 1 ? `An action of ${others[0]?.owner ?? ''} is overdue` : `${others.length} actions of others are overdue`, why: listed(others.map(({ title }) => title)), href: '/actions?state=overdue', verb: 'Show them' })]),
    ...near.map((action) => soon({ ...actionLine(action), why: `Due ${action.due}, ${daysWords(action.daysLeft)}.` })),
  ];
}

function actionLine({ id, title }: ActionFact): Omit<TodayItem, 'urgency' | 'why'> {
  return { id: `action-${id}`, title, href: `/actions/${id}`, verb: 'Open it' };
}
