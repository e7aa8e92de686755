import { mayRelease } from '@/lib/core/battery/may-release';
import type { AuditEvent } from '@/lib/audit/event';
import type { PackLimits } from '@/lib/content/model';
import type { Result } from '@/lib/units/quantity';
import { HOUR_MS } from '@/lib/units/time';
import { type Decided, refusedFor } from '../decided';
import { causeOfIsolation, isolationOf, type PackHistory } from '../pack-history';
import { type MoveChange, type NewState, stateChanged } from './new-state';

/** The rule says "that day included"; a whole day before is no less, and asks no time zone. */
const DAY_BEFORE_MS = 24 * HOUR_MS;
/** Why a pack is isolated when nobody wrote it down: as a sign of its own, which bars release. */
const UNKNOWN_CAUSE = 'sign';

/**
 * Whether an isolated pack may be released now, by the conditions of the content; else every reason against it.
 * @param reason the officer's, in writing
 * @param role of the person who asks
 */
export function mayReleasePack(limits: PackLimits, history: PackHistory, reason: string, role: string): Result<string> {
  const isolation = isolationOf(history);
  if (isolation === null) return { ok: false, reason: 'it is not isolated' };
  const since = isolation.since.getTime();
  const check = history.checks.find(({ at }) => at.getTime() >= since) ?? null;
  return mayRelease(limits, {
    by: role,
    cause: causeOfIsolation(history) ?? UNKNOWN_CAUSE,
    reason,
    hoursApart: check === null ? null : (check.at.getTime() - since) / HOUR_MS,
    firedSince: history.checks.filter(({ at }) => at.getTime() >= since - DAY_BEFORE_MS).flatMap(({ result }) => result.fired.map(({ id }) => id)),
    check: check?.result ?? null,
  });
}

/** Decides about a release: the pack goes to watch, never straight back in use. */
export function releasePack(limits: PackLimits, history: PackHistory, reason: string, role: string): Decided<MoveChange> {
  const may = mayReleasePack(limits, history, reason, role);
  if (!may.ok) return refusedFor('to', `Not released: ${may.reason}`);
  const since = isolationOf(history)?.since.getTime();
  const [check] = history.checks;
  // Without either, the rule above has refused.
  if (since === undefined || check === undefined) throw new Error('a release was allowed without a check');
  const state: NewState = { to: 'watch', reason, cause: null, checkId: check.id };
  const hoursApart = (check.at.getTime() - since) / HOUR_MS;
  const released: AuditEvent = { kind: 'pack.released', subjectId: history.pack.id, data: { label: history.pack.label, checkId: check.id, reason, hoursApart } };
  return { ok: true, change: { state, handOver: null }, events: [stateChanged(history.pack, state), released] };
}
