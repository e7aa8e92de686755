import { z } from 'zod';
import type { Fault } from '@/lib/forms/form-state';
import { readTypedNumber } from '@/lib/questionnaire/read-number';
import { type AdjustableLimit, CHECK_DAYS, type SchoolRules } from './school-rules';

const LIMIT = 'limit.';

/** The name of the field of a limit. */
export const fieldOfLimit = (id: string): string => LIMIT + id;

/** The form of the limits as it is sent: `revision` is of the school the form was filled from. */
export const RulesPostSchema = z.object({ revision: z.coerce.number().int(), checkDays: z.string() }).catchall(z.unknown());
export type RulesPost = z.output<typeof RulesPostSchema>;

type Read = { readonly ok: true; readonly rules: SchoolRules } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads the figures of the form. An empty field, or the content's own figure, sets nothing. Every fault is told at once. */
export function readRulesPost(post: RulesPost, limits: readonly AdjustableLimit[]): Read {
  const figures = limits.map(({ id, range, standing }) => ({ id, standing, ...readFigure(post[fieldOfLimit(id)], fieldOfLimit(id), range) }));
  const days = readFigure(post.checkDays, 'checkDays', CHECK_DAYS);
  const whole: readonly Fault[] = days.value !== null && !Number.isInteger(days.value) ? [{ field: 'checkDays', message: 'Write whole days' }] : [];
  const faults = [...figures, days].flatMap(({ fault }) => fault ?? []).concat(whole);
  if (faults.length > 0) return { ok: false, faults };
  const packLimits = Object.fromEntries(figures.flatMap(({ id, value, standing }) => (value === null || value === standing ? [] : [[id, value]])));
  return { ok: true, rules: { packLimits, ...(days.value === null ? {} : { checkDays: days.value }) } };
}

function readFigure(typed: unknown, field: string, { min, max }: AdjustableLimit['range']): { readonly value: number | null; readonly fault: Fault | null } {
  if (typeof typed !== 'string' || typed.trim() === '') return { value: null, fault: null };
  const read = readTypedNumber(typed);
  if (!read.ok) return { value: null, fault: { field, message: read.reason } };
  return read.value >= min && read.value <= max ? { value: read.value, fault: null } : { value: null, fault: { field, message: `Write a figure from ${min} to ${max}, or leave it empty` } };
}
