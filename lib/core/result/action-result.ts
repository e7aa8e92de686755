import type { ControlState } from '@/lib/content/model';

/** A stop condition that holds today. */
export interface StopResult { readonly id: string; readonly title: string; readonly why: string; readonly settledBy: string }

/** What one control would do if it alone were put in place. */
export interface ActionResult {
  readonly control: string;
  readonly title: string;
  readonly goodLooksLike: string;
  readonly state: ControlState;
  /** fall of total mean harm, harm points per season */
  readonly harmReduction: number;
  /** harmReduction as a share of today's total, 0 to 1 */
  readonly share: number;
  /** 5th and 95th percentile of the paired difference over the same draws */
  readonly interval: { readonly p05: number; readonly p95: number };
  /** effort points: hours plus points of the money band, at least 1 */
  readonly effort: number;
  readonly hours: number;
  readonly moneyBand: number;
  /** ids of stop conditions that would no longer hold */
  readonly clearsStops: readonly string[];
}

/** The controls that together leave the least harm within a budget. */
export interface BestSet {
  /** effort points */
  readonly budget: number;
  /** ids in order */
  readonly controls: readonly string[];
  /** effort points of the set */
  readonly effort: number;
  /** mean harm points per season */
  readonly harmBefore: number;
  readonly harmAfter: number;
  readonly harmReduction: number;
  /** harmReduction / harmBefore, 0 to 1 */
  readonly cut: number;
  /** of the draws, P5 to P95 of the share taken away */
  readonly cutInterval: { readonly p05: number; readonly p95: number };
  /** false when the search was given up, so that a better set may exist */
  readonly complete: boolean;
}

/** One bar of the tornado: total harm with one thing at its low and at its high end, all else as today. */
export interface DoubtResult {
  readonly kind: 'answer' | 'input' | 'control' | 'reach' | 'rate' | 'conditional' | 'burn strength';
  readonly id: string;
  readonly title: string;
  /** what is varied, in words, e.g. "in place, or absent" */
  readonly between: string;
  readonly harmLow: number;
  readonly harmHigh: number;
  /** something a person can go and look up or measure, not a figure of ours */
  readonly canBeChecked: boolean;
}
