import { z } from 'zod';
import type { PackCheckResult } from '@/lib/core/battery/pack-verdict';
import type { PackMeasures } from '@/lib/core/battery/pack-measures';
import type { ResistanceReading } from '@/lib/core/battery/resistance-ratio';

export const CHECK_PURPOSES = ['plain', 'opening', 'closing', 'release'] as const;
export type CheckPurpose = (typeof CHECK_PURPOSES)[number];

/** One look at one pack, as it was made. Never changed. */
export interface CheckRecord {
  readonly id: string;
  readonly purpose: CheckPurpose;
  readonly measures: PackMeasures;
  /** V of each cell in order, null for a cell that reads nothing; empty when no cell was measured */
  readonly cellVolts: readonly (number | null)[];
  readonly resistance: readonly ResistanceReading[];
  readonly contentVersion: string;
  readonly result: PackCheckResult;
  readonly note: string | null;
  readonly byName: string;
  readonly at: Date;
}

/** A check that is not kept yet: what was found, before somebody has put a name and a time to it. */
export type FoundInCheck = Pick<CheckRecord, 'measures' | 'cellVolts' | 'resistance' | 'result'>;

const value = z.union([z.number(), z.boolean(), z.string()]);
const verdict = z.enum(['fit', 'watch', 'retire', 'isolate', 'leave']);
const uses = z.array(z.enum(['charge', 'fly', 'travel'])).nullable();

/** Measures as they are kept. */
export const MeasuresSchema = z.record(z.string(), z.union([value, z.object({ missing: z.string() })])) satisfies z.ZodType<PackMeasures>;
export const CellVoltsSchema = z.array(z.number().nullable());
export const ResistanceSchema = z.array(z.object({ milliohms: z.number().positive(), temperature: z.number().nullable(), cellVoltage: z.number().nullable() }));

/** A verdict as it is kept, with the words of the edition that gave it. */
export const CheckResultSchema = z.object({
  verdict: verdict.nullable(),
  fired: z.array(z.object({ id: z.string(), verdict, text: z.string(), measure: z.string(), measured: value, op: z.enum(['<', '>', '>=', '=']), limit: value, blocks: uses })),
  missing: z.array(z.object({ measure: z.string(), why: z.string().nullable() })),
  blocks: uses,
  incomplete: z.string().nullable(),
  endsAt: z.object({ step: z.string(), measure: z.string() }).nullable(),
}) satisfies z.ZodType<PackCheckResult>;
