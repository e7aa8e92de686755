import 'server-only';
import { writeClosing, writeCorrection, writeLog, writeOpening } from '@/lib/db/sessions/write-session';
import { momentOfLocal } from '@/lib/forms/local-moment';
import type { CloseSessionInput } from '@/lib/sessions/close-session';
import type { CorrectLogInput, LogPacksInput } from '@/lib/sessions/log-packs';
import type { OpenSessionInput } from '@/lib/sessions/open-session';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { packLimitsOf } from '../packs/pack-limits';
import { currentSchool } from '../people/current-school';

/** Keeps an opening check and goes on to the session. */
export async function beginSession(actor: Actor, input: OpenSessionInput): Promise<Outcome> {
  const now = new Date();
  const startedAt = input.startedAt === null ? now : momentOfLocal(input.startedAt, (await currentSchool(actor)).timeZone);
  if (startedAt === null) return refused('startedAt', 'Write date and time, such as 2026-11-25T15:30');
  const written = await writeOpening(database(), actor, now, input, startedAt);
  return written.ok ? { ok: true, then: `/sessions/${written.id}` } : written;
}

const SAID = {
  charge: 'Logged: one charge more for each.',
  crash: 'Logged: one crash more for each. Each of them rests apart outdoors, and is checked before its next charge.',
} as const;

/** Adds a charge or a crash to each pack named; the page stays, for the next press. */
export async function logInSession(actor: Actor, input: LogPacksInput): Promise<Outcome> {
  const written = await writeLog(database(), actor, new Date(), await packLimitsOf(actor), input);
  return written.ok ? { ok: true, done: SAID[input.what] } : written;
}

export async function correctSession(actor: Actor, input: CorrectLogInput): Promise<Outcome> {
  const written = await writeCorrection(database(), actor, new Date(), await packLimitsOf(actor), input);
  return written.ok ? { ok: true, done: 'The count is put right.' } : written;
}

export async function endSession(actor: Actor, input: CloseSessionInput): Promise<Outcome> {
  const written = await writeClosing(database(), actor, new Date(), input);
  return written.ok ? { ok: true, then: `/sessions/${written.id}` } : written;
}
