import { type ChartPoint, uChart } from '@/lib/core/statistics/control-chart';
import { type Limits, rateLimits } from '@/lib/core/statistics/exact-limits';
import { DAY_MS } from '@/lib/units/time';
import { type Session, stateOfSession, sum } from './session';

/** An incident as the trend counts it. */
export interface TrendIncident {
  readonly at: Date;
  /** nothing and nobody was harmed: told beside, never counted against anybody */
  readonly onlyNearMiss: boolean;
}

/** Two weeks of the log. */
export interface TrendPeriod {
  readonly from: Date;
  readonly sessions: number;
  readonly charges: number;
  readonly incidents: number;
  readonly nearMisses: number;
  /** null where nothing was charged: there is no rate of nothing */
  readonly point: ChartPoint | null;
}

export interface Trend {
  readonly periods: readonly TrendPeriod[];
  readonly charges: number;
  readonly incidents: number;
  readonly nearMisses: number;
  /** incidents per charge, with exact 95 % limits; null where nothing was charged */
  readonly rate: { readonly value: number; readonly limits: Limits } | null;
  /** what can be said of it */
  readonly finding: TrendFinding;
}

/** `nothing`: no charge is logged. `too few`: good and bad luck cannot be told apart. */
export type TrendFinding = 'nothing' | 'too few' | 'steady' | 'above';

const PERIOD_MS = 14 * DAY_MS;
const CONFIDENCE = 0.95;
/** Below so many incidents the exact limits lie more than sevenfold apart (4: 1.09 to 10.2); our judgement. */
const LEAST_INCIDENTS = 5;
/** Below so many expected in a period one single incident can cross the limit of a u-chart; our judgement. */
const LEAST_EXPECTED = 1;

type Held = Pick<Session, 'startedAt' | 'endedAt' | 'opening' | 'packs'>;

/**
 * Incidents per charge, two weeks by two weeks from the first session on, with the limits of a u-chart and the exact
 * limits of the whole (Garwood). Source: lib/core/statistics, REFERENCES E.1 and E.2.
 * @param now end of the last period
 */
export function trendOf(sessions: readonly Held[], incidents: readonly TrendIncident[], now: Date): Trend {
  const held = sessions.filter((session) => stateOfSession(session) !== 'stopped' && session.startedAt <= now);
  const first = Math.min(...held.map(({ startedAt }) => startedAt.getTime()));
  const starts = held.length === 0 ? [] : Array.from({ length: Math.floor((now.getTime() - first) / PERIOD_MS) + 1 }, (_, index) => first + index * PERIOD_MS);
  const counted = starts.map((from) => count(held, incidents, from));
  const drawn = counted.filter(({ charges }) => charges > 0);
  const chart = drawn.length === 0 ? null : uChart(drawn.map(({ incidents: events, charges }) => ({ count: events, size: charges })));
  const points = chart?.ok === true ? chart.value.points : [];
  const periods = counted.map((period): TrendPeriod => ({ ...period, point: points[drawn.indexOf(period)] ?? null }));
  const total = (of: 'charges' | 'incidents' | 'nearMisses'): number => sum(periods.map((period) => period[of]));
  const [charges, events] = [total('charges'), total('incidents')];
  return {
    periods, charges, incidents: events, nearMisses: total('nearMisses'),
    rate: charges === 0 ? null : { value: events / charges, limits: rateLimits(events, charges, CONFIDENCE) },
    finding: findingOf(periods, charges, events),
  };
}

type Counted = Omit<TrendPeriod, 'point'>;

function count(sessions: readonly Held[], incidents: readonly TrendIncident[], from: number): Counted {
  const within = (at: Date): boolean => at.getTime() >= from && at.getTime() < from + PERIOD_MS;
  const held = sessions.filter(({ startedAt }) => within(startedAt));
  const happened = incidents.filter(({ at }) => within(at));
  return {
    from: new Date(from), sessions: held.length, charges: sum(held.flatMap(({ packs }) => packs.map(({ charges }) => charges))),
    incidents: happened.filter(({ onlyNearMiss }) => !onlyNearMiss).length, nearMisses: happened.filter(({ onlyNearMiss }) => onlyNearMiss).length,
  };
}

/** One period above its limit is worth a look only where the expected count lets the limit mean something. */
function findingOf(periods: readonly TrendPeriod[], charges: number, events: number): TrendFinding {
  if (charges === 0) return 'nothing';
  const drawn = periods.filter((period) => period.charges > 0);
  if (events < LEAST_INCIDENTS || events / drawn.length < LEAST_EXPECTED) return 'too few';
  return drawn.some(({ point }) => point?.where === 'above') ? 'above' : 'steady';
}
