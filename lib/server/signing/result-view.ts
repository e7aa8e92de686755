import 'server-only';
import { can } from '@/lib/access/can';
import { forceOn } from '@/lib/assessments/covers';
import type { ActionRecord } from '@/lib/assessments/actions';
import { isOpen } from '@/lib/assessments/standing';
import { type StandingWords, standingWords } from '@/lib/assessments/standing-words';
import type { VersionRecord } from '@/lib/assessments/version';
import { listActions } from '@/lib/db/assessments/actions';
import { type PaperMaterial, versionsUpTo } from '@/lib/db/assessments/paper-material';
import { readStanding, type StandingRecord } from '@/lib/db/assessments/read-standing';
import { schoolScope } from '@/lib/db/scope';
import { calendarDay, calendarDayWords, dayWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { type CurrentSchool, currentSchool } from '../people/current-school';
import { keptResult } from './kept-result';
import { versionInFull } from './material';
import { openStops } from './open-stops';
import type { Scored } from './score-version';

/** What this person may do with the version as it stands; the use cases decide once more. */
export interface MayDo {
  readonly handOver: boolean;
  readonly signAgain: boolean;
  /** returns, accepts stop conditions and signs: somebody else's work that lies with the officer */
  readonly judge: boolean;
  readonly sign: boolean;
  readonly suspend: boolean;
  readonly lift: boolean;
  readonly addAction: boolean;
  readonly comment: boolean;
  readonly beginNext: boolean;
  readonly settleReview: boolean;
}

export interface ResultView {
  readonly version: VersionRecord;
  readonly standing: StandingRecord;
  readonly words: StandingWords;
  readonly scored: Scored;
  /** whether it is the result that was kept with the paper, not worked out from what stands there now */
  readonly isKept: boolean;
  readonly acceptances: PaperMaterial['acceptances'];
  /** ids of stop conditions that hold and that nobody accepted */
  readonly openStops: readonly string[];
  readonly actions: readonly ActionRecord[];
  readonly school: CurrentSchool;
  readonly today: string;
  readonly may: MayDo;
}

/** A version with its result and how it stands, for one person of its school; null when it is not there for them. */
export async function resultView(actor: Actor, versionId: string): Promise<ResultView | null> {
  const found = await versionInFull(actor, versionId);
  if (found === null) return null;
  const { version, material } = found;
  const scope = schoolScope(actor);
  const [standing, school, earlier] = await Promise.all([readStanding(database(), scope, versionId, version.scope.officerId), currentSchool(actor), versionsUpTo(database(), scope, versionId)]);
  if (standing === null) return null;
  const kept = isOpen(version.state) ? null : await keptResult(actor, versionId);
  const today = calendarDay(new Date(), school.timeZone);
  const scored = kept ?? found.scored;
  const open = openStops({ ...found, scored }, today).map(({ id }) => id);
  const actions = (await listActions(database(), scope, earlier)).filter((action) => action.versionId === versionId || action.state === 'open');
  return {
    version, standing, scored, isKept: kept !== null, acceptances: material.acceptances, openStops: open, actions, school, today,
    words: wordsOf(version, standing, school, today, open.length), may: mayDo(actor, version, standing, open.length),
  };
}

function wordsOf(version: VersionRecord, standing: StandingRecord, style: CurrentSchool, today: string, open: number): StandingWords {
  const { suspension, reviewRequests: [review] } = standing;
  return standingWords({
    state: version.state,
    force: forceOn(today, { state: version.state, suspended: suspension !== null, until: version.reviewBy, reviewAsked: review !== undefined }),
    preparer: version.preparedByName, officer: standing.officerName, preparerSigned: standing.preparerSigned, openStops: open,
    until: version.reviewBy === null ? null : calendarDayWords(version.reviewBy, style),
    suspended: suspension === null ? null : { on: dayWords(suspension.at, style), by: suspension.byName, reason: suspension.reason },
    reviewAsked: review === undefined ? null : { on: dayWords(review.at, style), reason: review.reason },
    supersededBy: standing.supersededBy?.number ?? null,
  });
}

function mayDo(actor: Actor, version: VersionRecord, { preparerSigned, suspension, next }: StandingRecord, open: number): MayDo {
  const about = { actor, on: { schoolId: actor.schoolId, byId: version.preparedById } };
  const withOfficer = version.state === 'with-officer';
  const submit = can(actor.role, 'assessment.submit', about);
  const judge = withOfficer && can(actor.role, 'assessment.return', about);
  const isSigned = version.state === 'signed';
  return {
    handOver: isOpen(version.state) && submit,
    signAgain: withOfficer && !preparerSigned && submit,
    judge,
    sign: judge && preparerSigned && open === 0 && version.scope.officerId === actor.personId,
    suspend: isSigned && suspension === null && can(actor.role, 'assessment.suspend'),
    lift: suspension !== null && can(actor.role, 'assessment.lift-suspension'),
    addAction: version.state !== 'superseded' && version.state !== 'withdrawn' && can(actor.role, 'action.add'),
    comment: (isOpen(version.state) || withOfficer) && can(actor.role, 'assessment.comment'),
    beginNext: isSigned && next === null && can(actor.role, 'assessment.begin'),
    settleReview: isSigned && can(actor.role, 'assessment.settle-review'),
  };
}
