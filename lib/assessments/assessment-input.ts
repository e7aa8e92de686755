import { z } from 'zod';
import { line, optionalLine, optionalText } from '@/lib/forms/fields';

/** Beginning an assessment of a place, new or as a copy of an earlier version. */
export const BeginAssessmentSchema = z.object({
  siteId: line('Choose the place'),
  title: line('Give it a title, such as the room and the season'),
  season: optionalLine(40),
  copyFromId: optionalLine(),
});
export type BeginAssessmentInput = z.output<typeof BeginAssessmentSchema>;

/** Who went there and what was taken on trust. */
export const ScopeInputSchema = z.object({
  versionId: line('No assessment was named'),
  revision: z.coerce.number().int().min(1),
  visited: z.enum(['yes', 'no'], { error: 'Say whether somebody has been there' }),
  visitedOn: optionalLine(10).refine((day) => day === null || /^\d{4}-\d{2}-\d{2}$/.test(day), 'Write the day as year-month-day'),
  visitedBy: optionalLine(),
  seen: optionalText(),
  onTrust: optionalText(),
});
export type ScopeInput = z.output<typeof ScopeInputSchema>;
