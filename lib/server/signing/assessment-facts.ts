import 'server-only';
import { stillAccepted } from '@/lib/assessments/acceptance';
import type { VersionRecord } from '@/lib/assessments/version';
import { packEnergy } from '@/lib/core/battery/pack-energy';
import { numberInput } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { PaperMaterial, signerDetails } from '@/lib/db/assessments/paper-material';
import type { AssessmentFacts, PaperAction, PaperPack, Signer } from '@/lib/papers/assessment/facts';
import type { AmpereHours, Volts, WattHours } from '@/lib/units/quantity';
import { calendarDay, calendarDayWords, dayWords, type DateStyle } from '@/lib/wording/dates';
import { exact } from '@/lib/wording/numbers';
import type { CurrentSchool } from '../people/current-school';
import { shortFingerprint } from '../papers/document-number';
import { answersOnPaper } from './answers-on-paper';
import type { Scored } from './score-version';

type Person = NonNullable<Awaited<ReturnType<typeof signerDetails>>>;

export interface PaperMakings {
  readonly version: VersionRecord;
  readonly scored: Scored;
  readonly material: PaperMaterial;
  readonly school: CurrentSchool;
  readonly preparer: Person;
  readonly officer: Person;
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
  const { version, scored, material, school, now } = makings;
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
    packs: material.packs.map((pack) => packOnPaper(pack, style)),
    incidents: material.incidents.map((incident) => ({ number: String(incident.number), when: dayWords(incident.happenedAt, style), what: `${incident.kinds.map(({ kind }) => kind.replaceAll('-', ' ')).join(', ')}: ${incident.whatHappened}`, done: incident.whatWasDone ?? '', state: incident.state })),
    comments: material.comments.map((comment) => ({ by: comment.byName, on: dayWords(comment.at, style), text: comment.text })),
    retention: retentionWords(school),
    logEnd: makings.logEnd,
  };
}

const signer = ({ name, post, telephone, employer }: Person): Signer => ({ name, post, telephone, employer });

function actionOnPaper(action: PaperMaterial['actions'][number], today: string, style: DateStyle): PaperAction {
  const state = action.state === 'done' ? 'done' : action.dueOn < today ? 'overdue' : 'open';
  return { what: action.title, owner: action.ownerName, due: calendarDayWords(action.dueOn, style), state, note: action.closedNote ?? action.details ?? '', control: action.controlId };
}

/** A nominal cell is 3.7 V (common practice, no source); a printed energy wins. */
const NOMINAL_CELL = 3.7 as Volts;

function packOnPaper(pack: PaperMaterial['packs'][number], style: DateStyle): PaperPack {
  const [check] = pack.checks;
  const energyWh = packEnergy({ cellsInSeries: pack.series, rowsInParallel: pack.parallel, capacity: (pack.capacityMah / 1000) as AmpereHours, printed: pack.printedWh as WattHours | null }, NOMINAL_CELL);
  return {
    label: pack.label,
    kind: `${pack.series}S${pack.parallel > 1 ? `${pack.parallel}P` : ''} ${exact(pack.capacityMah)} mAh`,
    energyWh,
    fullVoltage: pack.cellType.replaceAll('-', ' '),
    source: [pack.maker, pack.seller].filter((part) => part !== null).join(', ') || 'not known',
    age: pack.boughtOn === null ? 'not known' : `bought ${calendarDayWords(pack.boughtOn, style)}`,
    lastCheck: check === undefined ? 'none' : `${dayWords(check.at, style)}, ${check.verdict ?? 'no verdict'}`,
    state: pack.state.replaceAll('-', ' '),
    place: [pack.area?.name ?? null, pack.place].filter((part) => part !== null).join(', ') || 'not said',
  };
}

function retentionWords({ schoolName }: CurrentSchool): string {
  return `Of those who were near an incident ${schoolName} keeps roles and initials, no more than needed; photos lose their location, and no face or name of a pupil is to be on them. Nothing is kept of anybody’s illness: numbers only. Signed papers and the log are kept as long as the school keeps its safety records; what is known of a person is removed when they ask and the law allows it. Organisers and safety officers see incidents in full, others only their own. Ask the school to see or remove what it keeps of you.`;
}
