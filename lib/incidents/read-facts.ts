import { z } from 'zod';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { listOf, oneOf, optionalLine, optionalText } from '@/lib/forms/fields';
import type { Fault } from '@/lib/forms/form-state';
import { momentOfLocal } from '@/lib/forms/local-moment';
import { MINUTE_MS } from '@/lib/units/time';
import { CALLED, CONTACTED, DOINGS, idsOf, KINDS, YES_NO } from './choices';
import { FACT_NAMES, type FactName, type Facts, isFactName, type PackOfIncident } from './facts';

/** Where and when the form is read: a time in it is local, and nothing happens in the future. */
export interface FormClock { readonly timeZone: string; readonly now: Date }

type Read<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly faults: readonly Fault[] };

/** A clock set a little fast is no lie. */
const FAST_MS = 10 * MINUTE_MS;
const MOST_PACKS = 60;

/** Reads one fact out of the fields a form has for it. */
export function readFact(name: FactName, raw: unknown, clock: FormClock): Read<Facts[FactName]> {
  const parsed = schemasFor(clock)[name].safeParse(raw);
  return parsed.success ? { ok: true, value: parsed.data } : { ok: false, faults: faultsOfIssues(parsed.error.issues) };
}

/** Reads all facts of a form, with every fault at once. */
export function readFacts(raw: unknown, clock: FormClock): Read<Facts> {
  const parsed = z.strictObject(schemasFor(clock)).safeParse(Object.fromEntries(FACT_NAMES.map((name) => [name, raw])));
  if (parsed.success) return { ok: true, value: parsed.data };
  // The first part of a path is the fact; the fields have the rest.
  return { ok: false, faults: faultsOfIssues(parsed.error.issues.map((issue) => ({ ...issue, path: isFactName(String(issue.path[0])) ? issue.path.slice(1) : issue.path }))) };
}

/** For each fact, the fields of the form it is made of. */
function schemasFor(clock: FormClock): { readonly [Name in FactName]: z.ZodType<Facts[Name]> } {
  return {
    called: z.object({ called: listOf(z.enum(idsOf(CALLED))) }).check(...CALLED_CHECKS).transform(({ called }) => called),
    hurt: z.object({ hurt: oneOf(idsOf(YES_NO), 'Say whether anybody was hurt') }).transform(({ hurt }) => hurt),
    breathed: z.object({ breathed: oneOf(idsOf(YES_NO), 'Say whether anybody breathed smoke') }).transform(({ breathed }) => breathed),
    kinds: z.object({ kinds: listOf(z.enum(idsOf(KINDS))).refine((kinds) => kinds.length > 0, 'Tick at least one thing it was') }).transform(({ kinds }) => kinds),
    packs: PacksFields,
    when: whenFields(clock),
    where: WhereFields,
    doing: z.object({ doing: oneOf(idsOf(DOINGS), 'Choose what was going on, or “Not sure”') }).transform(({ doing }) => doing),
    whatHappened: z.object({ whatHappened: optionalText() }).transform(({ whatHappened }) => whatHappened),
    firstAid: z.object({ firstAid: optionalText() }).transform(({ firstAid }) => firstAid),
    whatWasDone: z.object({ whatWasDone: optionalText() }).transform(({ whatWasDone }) => whatWasDone),
    contacted: z.object({ contacted: listOf(z.enum(idsOf(CONTACTED))) }).transform(({ contacted }) => contacted),
  };
}

interface CalledFields { readonly called: readonly string[] }
const CALLED_CHECKS = [
  z.refine<CalledFields>(({ called }) => called.length > 0, { path: ['called'], error: 'Tick who was called or warned, or that nobody was needed' }),
  z.refine<CalledFields>(({ called }) => called.length < 2 || !called.includes('nobody-needed'), { path: ['called'], error: 'Somebody was called and nobody was needed: only one can be true' }),
] as const;

const PacksFields = z
  .object({ involved: listOf(z.string()), involvedTyped: optionalText(), nearby: listOf(z.string()), nearbyTyped: optionalText() })
  .transform(({ involved, involvedTyped, nearby, nearbyTyped }) => packsOf([...involved, ...labelsOf(involvedTyped)], [...nearby, ...labelsOf(nearbyTyped)]))
  .refine((packs) => packs.length <= MOST_PACKS, { path: ['involvedTyped'], error: `At most ${MOST_PACKS} packs` });

/** A pack that is named twice took part. */
function packsOf(involved: readonly string[], nearby: readonly string[]): PackOfIncident[] {
  const packs = new Map<string, PackOfIncident>();
  for (const label of involved) packs.set(label.toLowerCase(), { label, part: 'involved' });
  for (const label of nearby) if (!packs.has(label.toLowerCase())) packs.set(label.toLowerCase(), { label, part: 'nearby' });
  return [...packs.values()];
}

function labelsOf(typed: string | null): readonly string[] {
  return (typed ?? '').split(/[,;\n]/).map((label) => label.trim().replace(/\s+/g, ' ')).filter((label) => label !== '');
}

function whenFields({ timeZone, now }: FormClock): z.ZodType<Facts['when']> {
  return z.object({ when: z.string({ error: 'Enter day and time' }), guessed: z.literal('yes').optional() }).transform(({ when, guessed }, context) => {
    const at = momentOfLocal(when, timeZone);
    const wrong = at === null ? 'Enter day and time, such as 25 November 2026, 15:48' : at.getTime() > now.getTime() + FAST_MS ? 'That has not happened yet. Look at day and time' : null;
    if (at !== null && wrong === null) return { at: at.toISOString(), known: guessed === undefined };
    context.addIssue({ code: 'custom', path: ['when'], message: wrong ?? '' });
    return z.NEVER;
  });
}

const CHOOSE_PLACE = 'Choose where it was';

/** `area:<site>:<area>`, `site:<site>`, `vehicle` or `elsewhere`. */
const WhereFields = z.object({ where: z.string({ error: CHOOSE_PLACE }), place: optionalLine() }).transform(({ where, place }, context): Facts['where'] => {
  const [kind, siteId, areaId] = where.split(':');
  if (kind === 'area' && siteId && areaId) return { siteId, areaId, place };
  if (kind === 'site' && siteId) return { siteId, areaId: null, place };
  if (kind === 'vehicle') return { siteId: null, areaId: null, place: place === null ? IN_A_VEHICLE : `${IN_A_VEHICLE}: ${place}` };
  if (kind === 'elsewhere' && place !== null) return { siteId: null, areaId: null, place };
  context.addIssue(kind === 'elsewhere' ? { code: 'custom', path: ['place'], message: 'Write where it was' } : { code: 'custom', path: ['where'], message: CHOOSE_PLACE });
  return z.NEVER;
});

const IN_A_VEHICLE = 'In a vehicle';
