import 'server-only';
import { recordCheck } from '@/lib/db/packs/record-check';
import { CHECK_PAGES } from '@/lib/packs/checks/check-pages';
import { type CheckForm, type CheckPost, typedOf } from '@/lib/packs/checks/check-post';
import type { FoundInCheck } from '@/lib/packs/checks/check-record';
import type { CheckContext } from '@/lib/packs/checks/measures-of-check';
import { takeCheck } from '@/lib/packs/checks/take-check';
import type { PackHistory } from '@/lib/packs/pack-history';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { PACK_CONTENT_VERSION, packLimitsOf, temperatureUnitOf } from './pack-limits';
import { findPack } from './read-packs';

/** Signs that are smoke or flame themselves: the first screen. Of the others one leaves by the screen for a hot pack. */
const SMOKE_MEASURES: readonly string[] = ['venting', 'hissing'];

/**
 * Takes a check one page further. A sign that means leaving ends it: the check is kept, the pack marked isolated, and the
 * alarm screen opens.
 */
export async function takePackCheck(actor: Actor, post: CheckPost): Promise<Outcome<CheckForm>> {
  const history = await findPack(actor, post.packId);
  if (history === null) return refused(null, 'Your register has no such pack');
  const typed = typedOf(post);
  if (post.back !== undefined) return { ok: true, done: `Back at: ${titleOf(post.back)}`, data: { page: post.back, typed } };
  const turn = takeCheck(post.page, typed, await contextOf(actor, history));
  switch (turn.turn) {
    case 'faults': return { ok: false, faults: turn.faults };
    case 'next': return { ok: true, done: `No sign so far that ends the check. Next: ${titleOf(turn.page)}`, data: { page: turn.page, typed } };
    case 'done':
    case 'leave': return keep(actor, history, turn.found);
  }
}

/** What a check is judged by, besides what is typed. */
async function contextOf(actor: Actor, { pack, charges, checks }: PackHistory): Promise<CheckContext> {
  const school = await currentSchool(actor);
  const firstResistance = checks.findLast(({ resistance }) => resistance.length > 0)?.resistance[0] ?? null;
  return { limits: await packLimitsOf(actor), pack, unit: temperatureUnitOf(school), today: calendarDay(new Date(), school.timeZone), charges, firstResistance };
}

async function keep(actor: Actor, { pack }: PackHistory, found: FoundInCheck): Promise<Outcome<CheckForm>> {
  const kept = await recordCheck(database(), actor, new Date(), { packId: pack.id, purpose: pack.state === 'isolated' ? 'release' : 'plain', contentVersion: PACK_CONTENT_VERSION, note: null, found });
  if (!kept.ok) return kept;
  if (found.result.verdict !== 'leave') return { ok: true, then: `/packs/${pack.id}` };
  const isSmoke = found.result.fired.some(({ measure, verdict }) => verdict === 'leave' && SMOKE_MEASURES.includes(measure));
  const at = pack.siteId === null ? '' : `?at=${encodeURIComponent(pack.siteId)}`;
  return { ok: true, then: isSmoke ? `/emergency${at}` : `/emergency/hot${at}` };
}

function titleOf(page: CheckPost['page']): string {
  return CHECK_PAGES.find(({ id }) => id === page)?.title ?? page;
}
