import type { PackLimits, ReleaseRule } from '@/lib/content/model';
import { ok, refuse, type Result } from '@/lib/units/quantity';
import type { PackCheckResult } from './pack-verdict';

/** What is known when somebody asks to take a pack out of isolation. */
export interface ReleaseRequest {
  /** office of the person who asks, `safety-officer` for one */
  readonly by: string;
  /** why the pack was isolated, `nearby` when it only lay beside another */
  readonly cause: string;
  readonly reason: string;
  /** hours between isolation and the check below; null when nobody knows */
  readonly hoursApart: number | null;
  /** rules that fired in any check since the day it was isolated, that day included */
  readonly firedSince: readonly string[];
  /** the check made for the release; null when there is none */
  readonly check: PackCheckResult | null;
}

/**
 * Whether a pack may leave isolation. Only one that was nearby, never one that showed a sign of its own;
 * every condition is in the content (`release`).
 * @returns the condition in words when all are met; else every reason against it, parted by semicolons
 */
export function mayRelease(limits: PackLimits, request: ReleaseRequest): Result<string> {
  const rule = limits.check?.release;
  if (rule === undefined) return refuse('this edition has no release from isolation');
  const against = [
    ...unless(request.by === rule.by, 'only the safety officer releases a pack'),
    ...unless(request.cause === rule.cause, 'only a pack that was nearby can be released'),
    ...unless(request.reason.trim() !== '', 'a reason in writing is wanted'),
    ...unless((request.hoursApart ?? 0) >= rule.hoursApart.value, `it has to lie apart for ${rule.hoursApart.value} ${rule.hoursApart.unit} before it is checked`),
    ...barred(limits, rule, request.firedSince),
    ...signs(rule, request.check),
  ];
  return against.length === 0 ? ok(rule.words) : refuse(against.join('; '));
}

const unless = (holds: boolean, reason: string): readonly string[] => (holds ? [] : [reason]);

/** An id that no edition knows bars too: nobody can say that it was harmless. */
function barred({ rules }: PackLimits, release: ReleaseRule, firedSince: readonly string[]): readonly string[] {
  return firedSince.flatMap((id) => {
    const rule = rules.find((one) => one.id === id);
    if (rule !== undefined && !release.neverAfter.includes(rule.verdict)) return [];
    return [`never released after: ${rule?.text ?? id}`];
  });
}

function signs(release: ReleaseRule, check: PackCheckResult | null): readonly string[] {
  if (check === null || check.verdict === null) return ['a check is wanted first'];
  const shown = check.fired.filter(({ id }) => !release.noSign.includes(id));
  return [
    ...unless(check.incomplete === null, 'the check is not complete'),
    ...shown.map(({ text }) => `the check shows: ${text}`),
  ];
}
