import type { Acceptable, StopCondition } from '@/lib/content/model';
import { type Decision, no, yes } from './standing';

/** What an officer writes to accept a stop condition. Days are calendar days, YYYY-MM-DD. */
export interface AcceptanceInput {
  readonly reason: string;
  /** what is done instead */
  readonly replacement: string;
  /** last day on which it holds */
  readonly endsOn: string;
  /** the authority's paper: what it is, where it is kept */
  readonly paper: string;
}
interface AcceptedStop { readonly stopId: string; readonly reason: string; readonly replacement: string; readonly endsOn: string; readonly paper: string | null }

/** Nothing is accepted for longer than an assessment may hold. */
const LONGEST_DAYS = 366;

/**
 * Whether a stop condition may be accepted in these words: never, only with a paper of the authority, or
 * only for some days with what replaces it, as the content says. What the content does not allow, no role does.
 * @param today the school's day
 */
export function acceptStop(stop: StopCondition, input: AcceptanceInput, today: string): Decision<AcceptedStop> {
  const { acceptable } = stop;
  if (acceptable === undefined || acceptable.kind === 'never') return no(acceptable?.text ?? 'This one cannot be accepted.');
  if (input.reason.trim() === '') return no('Write why it can be accepted.');
  const fault = ofItsKind(acceptable, input) ?? dayFault(input.endsOn, today, acceptable.kind === 'until' ? acceptable.days : LONGEST_DAYS);
  if (fault !== null) return no(fault);
  const paper = input.paper.trim();
  return yes({ stopId: stop.id, reason: input.reason.trim(), replacement: input.replacement.trim(), endsOn: input.endsOn, paper: paper === '' ? null : paper });
}

function ofItsKind(acceptable: Exclude<Acceptable, { readonly kind: 'never' }>, { paper, replacement }: AcceptanceInput): string | null {
  if (acceptable.kind === 'with-paper') return paper.trim() === '' ? `It takes a paper: ${acceptable.paper}.` : null;
  return replacement.trim() === '' ? 'Write what is done instead until then.' : null;
}

function dayFault(endsOn: string, today: string, most: number): string | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(endsOn)) return 'Give the last day on which it holds.';
  if (endsOn <= today) return 'The last day must lie ahead.';
  return endsOn > dayAfter(today, most) ? `At most ${most} days from today.` : null;
}

/** @returns the calendar day so many days later */
export function dayAfter(day: string, days: number): string {
  const date = new Date(`${day}T00:00:00Z`);
  date.setUTCDate(date.getUTCDate() + days);
  return date.toISOString().slice(0, 10);
}

/** Whether an acceptance still counts: it ends by itself. */
export function stillAccepted({ endsOn }: Pick<AcceptedStop, 'endsOn'>, today: string): boolean { return today <= endsOn; }
