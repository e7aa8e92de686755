import { z } from 'zod';
import { optionalDay } from '@/lib/forms/day-field';
import { line, listOf, optionalLine, optionalText } from '@/lib/forms/fields';
import { optionalTypedNumber } from '@/lib/questionnaire/number-field';
import { MATRICES } from './version';

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
  /** what stood there when the form was drawn: answers that change meanwhile are no reason to refuse it */
  before: z.string(),
  visited: z.enum(['yes', 'no'], { error: 'Say whether somebody has been there' }),
  visitedOn: optionalDay(),
  visitedBy: optionalLine(),
  seen: optionalText(),
  onTrust: optionalText(),
});
export type ScopeInput = z.output<typeof ScopeInputSchema>;

/** How risks are graded, and how much effort can be spent. */
export const SettingsInputSchema = z.object({
  versionId: line('No assessment was named'),
  matrix: z.enum(MATRICES, { error: 'Choose a matrix' }),
  effortBudget: optionalTypedNumber({ least: 0, most: 120, unit: 'points' }),
});
export type SettingsInput = z.output<typeof SettingsInputSchema>;

/** Beginning the next version of a signed one. */
export const BeginNextSchema = z.object({ copyFromId: line('Choose the version to copy'), season: optionalLine(40) });

/** Confirming what the registers know: ids of the questions whose filled-in answer is right. */
export const ConfirmKnownSchema = z.object({ versionId: line('No assessment was named'), right: listOf(z.string()) });
