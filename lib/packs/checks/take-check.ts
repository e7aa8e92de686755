import { checkCourse } from '@/lib/core/battery/check-course';
import { firedRules } from '@/lib/core/battery/fired-rules';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import type { PackLimits } from '@/lib/content/model';
import type { Fault } from '@/lib/forms/form-state';
import type { CheckTyped } from './check-answers';
import { checkFaults } from './check-faults';
import { type CheckPageId, pageAfter } from './check-pages';
import type { FoundInCheck } from './check-record';
import { type CheckContext, measuresOfCheck } from './measures-of-check';

/** What comes after a page of a check was sent. */
export type CheckTurn =
  | { readonly turn: 'faults'; readonly faults: readonly Fault[] }
  /** nothing against it so far, or nothing that ends it: the next page */
  | { readonly turn: 'next'; readonly page: CheckPageId }
  /** a sign of `leave`: nothing more is asked, everybody goes */
  | { readonly turn: 'leave'; readonly found: FoundInCheck }
  | { readonly turn: 'done'; readonly found: FoundInCheck };

/**
 * Takes a check one page further. A sign of `leave` ends it at once, whatever else of the page is open or wrong: nobody
 * is kept at a form beside such a pack.
 * @param typed everything given so far, this page included
 */
export function takeCheck(page: CheckPageId, typed: CheckTyped, context: CheckContext): CheckTurn {
  const { limits, pack, unit } = context;
  const measured = measuresOfCheck(typed, context);
  const course = checkCourse(limits, firedRules(limits, measured.measures).fired);
  const found = (): FoundInCheck => ({ ...measured, result: packVerdict(limits, measured.measures) });
  if (course.endsAt !== null) return { turn: 'leave', found: found() };
  const faults = checkFaults(limits, pack, typed, page, unit);
  if (faults.length > 0) return { turn: 'faults', faults };
  const next = pageAfter(page, course.steps.map(({ step }) => step.id));
  return next === null ? { turn: 'done', found: found() } : { turn: 'next', page: next };
}

/** Answers that are a sign of `leave` by themselves, by the name of their field, so that a page can say so at once. */
export function leaveAnswers(limits: PackLimits): Readonly<Record<string, readonly string[]>> {
  const signs = limits.rules.filter(({ verdict, value }) => verdict === 'leave' && value === true);
  return Object.fromEntries(signs.map(({ measure, doubtCounts }) => [measure, doubtCounts === true ? ['yes', 'not sure'] : ['yes']]));
}
