import { z } from 'zod';
import { idsOf } from '@/lib/forms/choices';
import { CALLED, CONTACTED, DOINGS, KINDS, PARTS, YES_NO } from './choices';

const yesNo = z.enum(idsOf(YES_NO));
const text = z.string().nullable();

/**
 * What is said of an incident, fact by fact, as it is kept. Each can be corrected by itself. Who was affected is not
 * among them: those rows can be removed on request, and a correction is for good.
 */
export const FACT_SCHEMAS = {
  called: z.array(z.enum(idsOf(CALLED))),
  hurt: yesNo,
  breathed: yesNo,
  kinds: z.array(z.enum(idsOf(KINDS))).min(1),
  packs: z.array(z.strictObject({ label: z.string().min(1), part: z.enum(PARTS) })),
  /** `at` is ISO 8601 in UTC; `known` is false when the time is a guess */
  when: z.strictObject({ at: z.iso.datetime(), known: z.boolean() }),
  where: z.strictObject({ siteId: text, areaId: text, place: text }),
  doing: z.enum(idsOf(DOINGS)),
  whatHappened: text,
  firstAid: text,
  whatWasDone: text,
  contacted: z.array(z.enum(idsOf(CONTACTED))),
};
export const FactsSchema = z.strictObject(FACT_SCHEMAS);
export type Facts = z.output<typeof FactsSchema>;
export type FactName = keyof Facts;
export type PackOfIncident = Facts['packs'][number];

/** In the order in which they are asked and shown. */
export const FACT_NAMES = Object.keys(FACT_SCHEMAS) as readonly FactName[];

export const FACT_TITLES: Readonly<Record<FactName, string>> = {
  called: 'Called or warned at once',
  hurt: 'Was anybody hurt?',
  breathed: 'Did anybody breathe smoke?',
  kinds: 'What it was',
  packs: 'Packs',
  when: 'When',
  where: 'Where',
  doing: 'What was going on',
  whatHappened: 'In their words',
  firstAid: 'First aid',
  whatWasDone: 'What was done',
  contacted: 'Told afterwards',
};

export function isFactName(word: string): word is FactName {
  return Object.hasOwn(FACT_SCHEMAS, word);
}

/** A fact said anew, with why. What was said before stays. */
export interface Correction {
  readonly number: number;
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
  readonly reason: string;
  readonly byName: string;
  readonly at: Date;
}

/**
 * Returns the facts as they stand after all corrections, in the order of their numbers. Throws when a correction does
 * not have the shape of its fact: it must not be read as if there were none.
 */
export function factsNow(first: Facts, corrections: readonly Pick<Correction, 'number' | 'field' | 'after'>[]): Facts {
  const inOrder = [...corrections].sort((a, b) => a.number - b.number).filter(({ field }) => isFactName(field));
  return FactsSchema.parse(Object.assign({ ...first }, ...inOrder.map(({ field, after }) => ({ [field]: after }))));
}
