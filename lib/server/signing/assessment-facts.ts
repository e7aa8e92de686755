import 'server-only';
import { stillAccepted } from '@/lib/assessments/acceptance';
import { recordSince } from '@/lib/assessments/record-since';
import type { VersionRecord } from '@/lib/assessments/version';
import { numberInput } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { PaperMaterial } from '@/lib/db/assessments/paper-material';
import { KINDS, labelOf } from '@/lib/incidents/choices';
import { incidentStateOf, incidentStateWords } from '@/lib/incidents/standing';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import type { AssessmentFacts, PaperAction, PaperIncident, Signer } from '@/lib/papers/assessment/facts';
import { calendarDay, calendarDayWords, dayWords, type DateStyle } from '@/lib/wording/dates';
import type { CurrentSchool } from '../people/current-school';
import type { SignerDetails } from '../papers/both-signers';
import { shortFingerprint } from '../papers/document-number';
import { answersOnPaper } from './answers-on-paper';
import { packOnPaper } from './pack-on-paper';
import type { Scored } from './score-version';

export interface PaperMakings {
  readonly version: VersionRecord;
  readonly scored: Scored;
  readonly material: PaperMaterial;
  /** those the school holds its packs to */
  readonly limits: SchoolPackLimits;
  readonly school: CurrentSchool;
  readonly preparer: SignerDetails;
  readonly officer: SignerDetails;
  readonly officerId: string;
  readonly number: string;
  readonly verifyAt: string;
  /** where the paper stands as a page */
  readonly twinAt: string;
  readonly reviewBy: string;
  readonly now: Date;
  /** end of the school's log; null in a preview */
  readonly logEnd: { readonly number: number; readonly hash: string } | null;
}

/** All of what is kept about a version, as the facts of its paper. */
export function assessmentFacts(makings: PaperMakings): AssessmentFacts {
  const { version, scored, material, limits, school, now } = makings;
  const style: DateStyle = { locale: school.locale, timeZone: school.timeZone };
  const today = calendarDay(now, school.timeZone);
  const venue = resolveVenue(scored.content, scored.document);
  const figure = (input: string): number => numberInput(venue, input);
  return {
    ...scored,
    number: makings.number,
    version: version.number,
    state: 'for signature',
    format: school.paper === 'A4' ? 'A4' : 'LETTER',
    language: school.locale,
    madeAt: now.toISOString(),
    madeOn: dayWords(now, style),
    fingerprint: shortFingerprint(scored.result.inputHash),
    verifyAt: makings.verifyAt,
    twinAt: makings.twinAt,
    school: { name: school.schoolName, employer: school.schoolName },
    place: `${version.title}, ${version.siteName}`,
    keyHolder: [material.site?.keyHolder ?? '', material.site?.keyHolderPhone ?? ''].filter((part) => part !== '').join(', '),
    season: version.season === '' ? 'no season named' : `Season ${version.season}`,
    preparer: signer(makings.preparer),
    officer: signer(makings.officer),
    visit: version.visited === true ? { on: version.visitedOn === null ? 'no day named' : calendarDayWords(version.visitedOn, style), by: version.scope.visitedBy, seen: version.scope.seen } : null,
    onTrust: version.scope.onTrust,
    signedFor: 'today',
    inForceUntil: calendarDayWords(makings.reviewBy, style),
    covers: { packs: figure('packs'), storedWh: scored.result.battery.storedWh, sessions: figure('sessions'), people: figure('peopleRoom') },
    rulesConsulted: [], attachments: material.acceptances.flatMap((one) => (one.paper === null ? [] : [{ title: one.paper, fingerprint: 'kept by the officer' }])),
    acceptances: material.acceptances.filter((one) => stillAccepted(one, today)).map((one) => ({ stop: one.stopId, reason: one.reason, replacedBy: one.replacement, until: calendarDayWords(one.endsOn, style), paper: one.paper, by: one.byName })),
    actions: material.actions.map((action) => actionOnPaper(action, today, style)),
    answers: answersOnPaper(scored.content, version, material.evidence),
    packs: material.packs.map((pack) => packOnPaper(limits, pack, style)),
    incidents: material.incidents.filter(({ happenedAt }) => happenedAt >= recordSince(now)).map((incident) => incidentOnPaper(incident, style)),
    comments: material.comments.map((comment) => ({ by: comment.byName, on: dayWords(comment.at, style), text: comment.text })),
    retention: retentionWords(school),
    logEnd: makings.logEnd,
  };
}

const signer = ({ name, post, telephone, employer }: SignerDetails): Signer => ({ name, post, telephone, employer });

function actionOnPaper(action: PaperMaterial['actions'][number], today: string, style: DateStyle): PaperAction {
  const state = action.state === 'done' ? 'done' : action.dueOn < today ? 'overdue' : 'open';
  return { what: action.title, owner: action.ownerName, due: calendarDayWords(action.dueOn, style), state, note: action.closedNote ?? action.details ?? '', control: action.controlId };
}

function incidentOnPaper({ number, happenedAt, kinds, whatHappened, whatWasDone, state }: PaperMaterial['incidents'][number], style: DateStyle): PaperIncident {
  const what = kinds.map(({ kind }) => labelOf(KINDS, kind)).join(', ');
  return { number: String(number), when: dayWords(happenedAt, style), what: whatHappened === '' ? what : `${what}: ${whatHappened}`, done: whatWasDone ?? '', state: incidentStateWords(incidentStateOf(state)) };
}

function retentionWords({ schoolName }: CurrentSchool): string {
  return `Of those who were near an incident ${schoolName} keeps roles and initials, no more than needed; photos lose their location, and no face or name of a pupil is to be on them. Nothing is kept of anybody’s illness: numbers only. Signed papers and the log are kept as long as the school keeps its safety records; what is known of a person is removed when they ask and the law allows it. Organisers and safety officers see incidents in full, others only their own. Ask the school to see or remove what it keeps of you.`;
}
