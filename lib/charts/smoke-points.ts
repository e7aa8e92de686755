import type { Content } from '@/lib/content/model';
import type { SmokeCase, SmokeLevel } from '@/lib/core/result';
import { perSecond, shareInAir } from '@/lib/core/smoke/well-mixed';
import type { AirChangesPerHour, Seconds } from '@/lib/units/quantity';

/** Published concentrations of hydrogen fluoride to draw against, ppm. */
export interface SmokeThresholds {
  /** immediately dangerous to life or health */
  readonly dangerous: number;
  /** AEGL-3 for half an hour: life at risk */
  readonly lifeAtRisk: number;
  /** AEGL-1: irritation begins */
  readonly irritation: number;
}

/**
 * The thresholds out of the content's published tables.
 * @throws when the tables have no half-hour values: a fault of the content
 */
export function smokeThresholds({ aegl, idlh }: Pick<Content, 'aegl' | 'idlh'>): SmokeThresholds {
  const half = aegl.durationsMin.indexOf(HALF_HOUR);
  const [irritation, lifeAtRisk] = [aegl.HF['1'][half], aegl.HF['3'][half]];
  if (irritation === undefined || lifeAtRisk === undefined) throw new Error('the content has no half-hour values for hydrogen fluoride');
  return { dangerous: idlh.HF, lifeAtRisk, irritation };
}

export interface SmokePoint { readonly seconds: number; readonly low: number; readonly mid: number; readonly high: number }

const HALF_HOUR = 30;
/** Points on the curve besides its bend; the curve is smooth, so many are not needed. */
const STEPS = 60;

/**
 * Hydrogen fluoride in the well-mixed room over time, ppm, at low, middle and high yields. Each level's
 * published peak stands at the end of the release, so C(t) = peak · share(t) / share(τ) (`shareInAir`).
 * @param span seconds from the first smoke that are drawn, above 0
 */
export function smokePoints(smoke: SmokeCase, span: number): readonly SmokePoint[] {
  const k = perSecond(smoke.airChanges as AirChangesPerHour);
  const release = smoke.releaseSeconds as Seconds;
  const atPeak = shareInAir(k, release, release);
  const times = [...Array.from({ length: STEPS + 1 }, (_, step) => (span * step) / STEPS), ...(release < span ? [release] : [])].sort((a, b) => a - b);
  return times.map((seconds) => {
    const share = shareInAir(k, release, seconds as Seconds) / atPeak;
    const at = (level: SmokeLevel): number => level.HF.peakPpm * share;
    return { seconds, low: at(smoke.levels.low), mid: at(smoke.levels.mid), high: at(smoke.levels.high) };
  });
}

/** Seconds to draw: ten minutes, or until the room is empty and a little more. */
export function smokeSpan(smoke: SmokeCase): number {
  return Math.max(600, Math.ceil((smoke.evacuationSeconds * 1.2) / 120) * 120, Math.ceil((smoke.releaseSeconds * 1.2) / 120) * 120);
}
