import 'server-only';
import { contentByVersion } from '@/lib/content/editions';
import { limitsOfPack } from '@/lib/core/battery/limits-of-pack';
import { measureOf } from '@/lib/core/battery/pack-measures';
import { numberInput } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { CheckedAssessment, CheckedPack, CheckFacts } from '@/lib/events/check/facts';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { packFigures } from '@/lib/packs/pack-figures';
import type { ListedPack } from '@/lib/packs/pack-list';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import { blockedUses } from '@/lib/packs/states/blocked-uses';
import type { Site } from '@/lib/places/place';
import { calendarDay } from '@/lib/wording/dates';
import type { CurrentSchool } from '../people/current-school';
import type { EventInFull, Rests } from './event-in-full';
import { restsForce } from './rests-force';
import { venueConditions } from './venue-conditions';

/** Where the school has set none: common practice, as the content has it (control store-check), every week. */
const CHECKED_WITHIN_DAYS = 7;

/** What the check before leaving is made of, out of all that is kept. */
export function checkFacts({ event, content, school, site, packs, limits, rests, onItsWay, now }: Omit<EventInFull, 'lines'>): CheckFacts {
  const lastDay = calendarDay(event.endsAt, school.timeZone);
  return {
    eventId: event.id, now, startsAt: event.startsAt, lastDay, manyDays: calendarDay(event.startsAt, school.timeZone) !== lastDay,
    site: {
      id: site.id, kind: site.kind,
      ...meetingOf(site, school),
      hasOutdoorSpot: site.areas.some(({ use }) => use === 'isolation'), hasChargingArea: site.areas.some(({ use }) => use === 'charging'),
    },
    people: event.people, spectators: event.spectators, adults: event.adults,
    packs: packs.map((pack) => checkedPack(limits, pack)),
    assessment: rests === null ? null : checkedAssessment(rests, lastDay, calendarDay(now, school.timeZone)),
    assessmentOnItsWay: onItsWay?.id ?? null,
    details: event.details,
    notAgreed: site.kind === 'own' ? [] : venueConditions({ event, content, site, rests }).filter(({ stands }) => !stands).map(({ words }) => words),
    checkedWithinDays: limits.checkDays ?? CHECKED_WITHIN_DAYS,
  };
}

/** Whom to call and where to meet; a place of the school's own has those of the school where it says nothing. */
export function meetingOf(site: Site, school: CurrentSchool): Pick<Site, 'emergencyNumber' | 'meetingPlace' | 'secondMeetingPlace'> {
  const { emergencyNumber, meetingPlace, secondMeetingPlace } = site.kind === 'own' ? school : { emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null };
  return { emergencyNumber: site.emergencyNumber ?? emergencyNumber, meetingPlace: site.meetingPlace ?? meetingPlace, secondMeetingPlace: site.secondMeetingPlace ?? secondMeetingPlace };
}

/** A pack as the check sees it: state, last check and charge out of the register, nothing guessed. */
export function checkedPack(limits: SchoolPackLimits, listed: ListedPack): CheckedPack {
  const { pack, lastCheck } = listed;
  const verdict = lastCheck?.result.verdict ?? null;
  const blocked = blockedUses(limits, pack, lastCheck);
  return {
    label: pack.label, state: pack.state, damaged: pack.state === 'isolated' || verdict === 'isolate' || verdict === 'leave',
    stopped: blocked.uses.includes('travel') ? blocked.why : null, lastCheckAt: lastCheck?.at ?? null, charge: chargeOf(limits, listed), energyWh: energyOf(limits, listed),
  };
}

/** Energy as printed or worked out of the label, Wh; null where neither can be had. */
export function energyOf(limits: SchoolPackLimits, { pack }: ListedPack): number | null {
  const cell = cellTypeFacts(limits).find(({ id }) => id === pack.cellType);
  return cell === undefined ? pack.printedWh : packFigures(pack, cell).energyWh;
}

/** Lowest and highest cell of the last check, V; null where it was not measured. */
export function cellsOf({ lastCheck }: ListedPack): { readonly low: number; readonly high: number } | null {
  if (lastCheck === null) return null;
  const [low, high] = [measureOf(lastCheck.measures, 'cellMin'), measureOf(lastCheck.measures, 'cellMax')];
  return low.is === 'value' && high.is === 'value' && typeof low.value === 'number' && typeof high.value === 'number' ? { low: low.value, high: high.value } : null;
}

function chargeOf(schoolLimits: SchoolPackLimits, listed: ListedPack): CheckedPack['charge'] {
  const [cells, limits] = [cellsOf(listed), limitsOfPack(schoolLimits, listed.pack.cellType)];
  if (cells === null || !limits.ok) return null;
  const { low, high } = limits.value.storageCharge;
  if (cells.high > high) return 'above';
  return cells.low < low ? 'below' : 'storage';
}

function checkedAssessment({ version, scored }: Rests, lastDay: string, today: string): CheckedAssessment {
  const venue = scored === null ? null : resolveVenue(scored.content, scored.document);
  return {
    versionId: version.id, name: `“${version.assessment.title}”, version ${version.number}`, holdsUntil: version.reviewBy,
    force: restsForce(version, today),
    covers: scored === null || venue === null ? null : { packs: numberInput(venue, 'packs'), storedWh: scored.result.battery.storedWh, people: numberInput(venue, 'peopleRoom'), spectators: numberInput(venue, 'spectators') },
    endedAcceptances: version.stopAcceptances.filter(({ endsOn }) => endsOn < lastDay).map(({ stopId }) => contentByVersion(version.contentVersion)?.stops.find(({ id }) => id === stopId)?.title ?? stopId),
  };
}
