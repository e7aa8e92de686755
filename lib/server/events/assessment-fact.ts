import 'server-only';
import { contentByVersion } from '@/lib/content/editions';
import { numberInput } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { EventAssessmentFact, EventRiskFact } from '@/lib/papers/event/facts';
import { riskCouldKill } from '@/lib/wording/could-kill';
import { calendarDayWords, dayWords, type DateStyle } from '@/lib/wording/dates';
import { gradeWord } from '@/lib/wording/grades';
import type { Scored } from '../signing/score-version';
import type { Rests } from './event-in-full';

/** The signed assessment behind an event, as its papers say it; null when what it rests on was not kept. */
export function assessmentFact({ version, scored }: Rests, force: string, style: DateStyle): EventAssessmentFact | null {
  if (scored === null) return null;
  const venue = resolveVenue(scored.content, scored.document);
  const stop = (id: string): string => contentByVersion(version.contentVersion)?.stops.find((one) => one.id === id)?.title ?? id;
  return {
    number: version.documents[0]?.number ?? 'not known', title: version.assessment.title, version: version.number,
    signedOn: version.signedAt === null ? 'no day named' : dayWords(version.signedAt, style),
    holdsUntil: version.reviewBy === null ? 'no day named' : calendarDayWords(version.reviewBy, style), force,
    covers: { packs: numberInput(venue, 'packs'), storedWh: scored.result.battery.storedWh, people: numberInput(venue, 'peopleRoom') },
    risks: risks(scored),
    accepted: version.stopAcceptances.map(({ stopId, reason, endsOn, byName }) => `${stop(stopId)}: ${reason} Until ${calendarDayWords(endsOn, style)}, by ${byName}.`),
  };
}

function risks({ result, content }: Scored): readonly EventRiskFact[] {
  return result.risks
    .filter(({ grade }) => grade !== 'not applicable')
    .map((risk) => ({ id: risk.id, title: risk.title, grade: risk.grade, gradeWord: gradeWord(risk.grade, risk.grade === 'not applicable' ? undefined : result.matrix.gradeWords[risk.grade]), couldKill: riskCouldKill(risk, content.harmWeights) }));
}
