import 'server-only';
import { type Covered, drifted, forceOn } from '@/lib/assessments/covers';
import { ScopeSchema } from '@/lib/assessments/version';
import { numberInput } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { contentByVersion } from '@/lib/content/editions';
import type { OpenPaper } from '@/lib/db/today/read-today';
import type { PaperFact, SignedFact } from '@/lib/today/facts';
import { calendarDayWords, type DateStyle } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { keptResult } from '../signing/kept-result';
import { daysBetween } from './days';

/** A paper as Today sees it, with what it covers and what there is now of it. */
export interface PaperNow { readonly fact: PaperFact; readonly covers: readonly CoverLine[] }

/** One thing a signed paper took for granted; null now: nobody has counted it. */
export interface CoverLine { readonly what: keyof Covered; readonly covered: number; readonly now: number | null }

export interface PaperContext {
  readonly actor: Actor;
  readonly today: string;
  readonly style: DateStyle;
  readonly officerName: (personId: string) => string | null;
  /** register and log, for the place of a paper that was signed at some time */
  readonly nowOf: (paper: OpenPaper) => Partial<Covered>;
}

export async function paperNow(paper: OpenPaper, context: PaperContext): Promise<PaperNow> {
  const { actor, officerName, nowOf } = context;
  const { officerId } = ScopeSchema.parse(JSON.parse(paper.scopeJson));
  const now = paper.state === 'signed' ? nowOf(paper) : {};
  const covered = paper.state === 'signed' ? await coveredBy(actor, paper.id) : null;
  const fact: PaperFact = {
    id: paper.id, name: `“${paper.assessment.title}”, version ${paper.number}`, state: stateOf(paper.state), preparer: paper.preparedByName, officer: officerId === '' ? null : officerName(officerId),
    isMine: paper.preparedById === actor.personId, isForMe: officerId === actor.personId, preparerSigned: paper.documents.length > 0,
    standing: paper.state === 'signed' ? standingOf(paper, context, covered === null ? [] : driftWords(covered, now)) : null,
  };
  const covers = covered === null ? [] : (Object.keys(covered) as (keyof Covered)[]).map((what): CoverLine => ({ what, covered: covered[what], now: now[what] ?? null }));
  return { fact, covers };
}

function standingOf(paper: OpenPaper, { today, style }: PaperContext, drifts: readonly string[]): SignedFact {
  const [suspension] = paper.suspensions;
  const force = forceOn(today, { state: paper.state, suspended: suspension !== undefined, until: paper.reviewBy, reviewAsked: paper.reviewRequests.length > 0 });
  if (force === 'superseded' || force === 'not signed') throw new Error(`version ${paper.id} is ${force}, and was read as signed`);
  return {
    force, drifts, reason: suspension?.reason ?? paper.reviewRequests[0]?.reason ?? null,
    until: paper.reviewBy === null ? null : calendarDayWords(paper.reviewBy, style), daysLeft: paper.reviewBy === null ? null : daysBetween(today, paper.reviewBy),
    acceptances: paper.stopAcceptances.map(({ stopId, endsOn }) => ({ stop: stopTitle(paper.contentVersion, stopId), until: calendarDayWords(endsOn, style), daysLeft: daysBetween(today, endsOn) })),
  };
}

/** More packs are more energy in the store: said once. */
function driftWords(covered: Covered, now: Partial<Covered>): readonly string[] {
  const drifts = drifted(covered, now);
  const packsToo = drifts.some(({ what }) => what === 'packs');
  return drifts.filter(({ what }) => !(packsToo && what === 'storedWh')).map(({ words }) => words);
}

/** What the signed result took for granted; null when the paper rests on no result that was kept. */
async function coveredBy(actor: Actor, versionId: string): Promise<Covered | null> {
  const kept = await keptResult(actor, versionId);
  if (kept === null) return null;
  const venue = resolveVenue(kept.content, kept.document);
  return { packs: numberInput(venue, 'packs'), storedWh: kept.result.battery.storedWh, sessions: numberInput(venue, 'sessions'), people: numberInput(venue, 'peopleRoom') };
}

function stopTitle(contentVersion: string, stopId: string): string {
  return contentByVersion(contentVersion)?.stops.find(({ id }) => id === stopId)?.title ?? stopId;
}

function stateOf(state: string): PaperFact['state'] {
  if (state === 'draft' || state === 'with-officer' || state === 'returned' || state === 'signed') return state;
  throw new Error(`a version that is ${state} needs nobody`);
}
