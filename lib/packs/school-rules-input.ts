import { z } from 'zod';
import type { Fault } from '@/lib/forms/form-state';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { TEMPERATURE_UNITS } from './checks/check-answers';
import { figureToKeep, shownFigure } from './limit-figure';
import { type AdjustableLimit, CHECK_DAYS, type SchoolRules } from './school-rules';

const LIMIT = 'limit.';

/** The name of the field of a limit. */
export const fieldOfLimit = (id: string): string => LIMIT + id;

/** The form of the limits as it is sent: `revision` and `temperature` are of the school the form was filled from. */
export const RulesPostSchema = z.object({ revision: z.coerce.number().int(), temperature: z.enum(TEMPERATURE_UNITS), checkDays: z.string() }).catchall(z.unknown());
export type RulesPost = z.output<typeof RulesPostSchema>;

type Read = { readonly ok: true; readonly rules: SchoolRules } | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads the figures of the form. An empty field, or the content's own figure, sets nothing. Every fault is told at once.
 * @param standing what the school has set until now
 */
export function readRulesPost(post: RulesPost, limits: readonly AdjustableLimit[], standing: SchoolRules): Read {
  const figures = limits.map((limit) => ({ limit, ...readLimit(post, limit, standing.packLimits[limit.id]) }));
  const days = readFigure(post.checkDays, 'checkDays', CHECK_DAYS);
  const whole: readonly Fault[] = days.value !== null && !Number.isInteger(days.value) ? [{ field: 'checkDays', message: 'Write whole days' }] : [];
  const faults = [...figures, days].flatMap(({ fault }) => fault ?? []).concat(whole);
  if (faults.length > 0) return { ok: false, faults };
  const packLimits = Object.fromEntries(figures.flatMap(({ limit, value }) => (value === null || value === limit.standing ? [] : [[limit.id, value]])));
  return { ok: true, rules: { packLimits, ...(days.value === null ? {} : { checkDays: days.value }) } };
}

interface Figure { readonly value: number | null; readonly fault: Fault | null }

function readLimit(post: RulesPost, { id, unit, range, standing }: AdjustableLimit, own: number | undefined): Figure {
  const shown = [...(own === undefined ? [] : [own]), standing, range.min, range.max];
  return readFigure(post[fieldOfLimit(id)], fieldOfLimit(id), range, {
    keep: (typed) => figureToKeep(unit, typed, post.temperature, shown),
    show: (value) => shownFigure(unit, value, post.temperature),
  });
}

/** How a figure is kept and shown; days are both as they are typed. */
interface Manner { readonly keep: (typed: number) => number; readonly show: (value: number) => number }
const AS_TYPED: Manner = { keep: (typed) => typed, show: (value) => value };

function readFigure(typed: unknown, field: string, { min, max }: AdjustableLimit['range'], { keep, show }: Manner = AS_TYPED): Figure {
  if (typeof typed !== 'string' || typed.trim() === '') return { value: null, fault: null };
  const read = readTypedNumber(typed);
  if (!read.ok) return { value: null, fault: { field, message: read.reason } };
  const value = keep(read.value);
  return value >= min && value <= max ? { value, fault: null } : { value: null, fault: { field, message: `Write a figure from ${show(min)} to ${show(max)}, or leave it empty` } };
}
