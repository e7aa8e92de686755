import 'server-only';
import { dayAfter } from '@/lib/assessments/acceptance';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import type { Paper } from '@/lib/papers/paper';
import { calendarDay } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { refused } from '../forms/outcome';
import { packLimitsOf } from '../packs/pack-limits';
import { bothSigners } from '../papers/both-signers';
import { currentSchool } from '../people/current-school';
import { publicAddress } from '../people/public-address';
import { assessmentFacts, type PaperMakings } from './assessment-facts';
import type { VersionInFull } from './material';

/** No assessment holds longer than a year. */
const LONGEST_DAYS = 365;

export interface Asked { readonly officerId: string; readonly reviewBy: string }
export type Makings = Omit<PaperMakings, 'number' | 'verifyAt' | 'twinAt' | 'logEnd'>;

/** What a paper of a version is made from, or why it is not made: who checks it and until when it is to hold. */
export async function paperMakings(actor: Actor, found: VersionInFull, asked: Asked, now: Date): Promise<{ readonly ok: true; readonly makings: Makings; readonly today: string } | ReturnType<typeof refused>> {
  const school = await currentSchool(actor);
  const today = calendarDay(now, school.timeZone);
  if (asked.reviewBy <= today || asked.reviewBy > dayAfter(today, LONGEST_DAYS)) return refused('reviewBy', 'Choose a day within the next twelve months');
  const [signers, limits] = await Promise.all([bothSigners(actor, { preparedById: found.version.preparedById, officerId: asked.officerId }), packLimitsOf(actor)]);
  if (!signers.ok) return signers;
  const { preparer, officer } = signers;
  return { ok: true, today, makings: { ...found, limits, school, preparer, officer, officerId: asked.officerId, reviewBy: asked.reviewBy, now } };
}

/** Stands where the number will: it is given when the paper is signed. */
const NUMBER_LATER = 'number given when signed';

/**
 * The paper as it would be signed now, but for what its making adds: number, moment, and the end of the log. The same
 * makings give the same preview all day, so that what was read can be held to what is signed.
 */
export async function previewOf(makings: Makings, today: string): Promise<Paper> {
  return assessmentPaper({ ...assessmentFacts({ ...makings, number: NUMBER_LATER, verifyAt: await publicAddress('/verify'), twinAt: await publicAddress(`/assessments/${makings.version.id}/paper`), logEnd: null }), madeAt: `${today}T00:00:00.000Z` });
}
