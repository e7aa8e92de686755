import 'server-only';
import { randomUUID } from 'node:crypto';
import { can } from '@/lib/access/can';
import type { ActionOnCase } from '@/lib/access/table';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { handOverEvent, signEvent } from '@/lib/db/events/sign-event';
import { schoolScope } from '@/lib/db/scope';
import { openLines } from '@/lib/events/check/check-event';
import type { EventRecord } from '@/lib/events/event';
import type { HandOverEventInput, SignEventInput } from '@/lib/events/signing-input';
import { EVENT_PAPERS } from './paper-kinds';
import type { Actor } from '../actor';
import { confirmPassword } from '../auth/confirm-password';
import { database } from '../database';
import { type Outcome, overtaken, refused } from '../forms/outcome';
import { beginPaper } from '../papers/begin-paper';
import { bothSigners } from '../papers/both-signers';
import { newDocumentNumber } from '../papers/document-number';
import { fingerprintOfPaper, packPaper } from '../papers/paper-data';
import { printedFormat, readyToSign, signAs } from '../papers/sign-as';
import { eventInFull } from './gather';
import { eventFactsFor, previewOf } from './makings';

const NOT_THERE = 'This event is not there';

/** Whether the actor may do this with an event, by whose it is. */
export function mayOnEvent(actor: Actor, action: Extract<ActionOnCase, `event.${string}`>, { preparedById }: Pick<EventRecord, 'preparedById'>): boolean {
  return can(actor.role, action, { actor, on: { schoolId: actor.schoolId, byId: preparedById } });
}

/** Hands an event to the officer: begins to make the file of what stands there now, signed by its preparer, who gives the password again. */
export async function handOver(actor: Actor, input: HandOverEventInput): Promise<Outcome> {
  const now = new Date();
  const full = await eventInFull(actor, input.eventId, now);
  if (full === null) return refused(null, NOT_THERE);
  const { event, rests, school } = full;
  if (!mayOnEvent(actor, 'event.submit', event)) return refused(null, 'Only the person who prepares it hands it over, because that person signs first');
  const signers = await bothSigners(actor, { preparedById: event.preparedById, officerId: input.officerId });
  if (!signers.ok) return signers;
  if (fingerprintOfPaper(await previewOf(full, signers, 'event')) !== input.seen) return overtaken('The file has changed since you opened this page. Read it again as it is now, then sign');
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const [ready, number] = [await readyToSign(actor, input.password, now), newDocumentNumber()];
  const facts = await eventFactsFor(full, signers, number);
  const paper = EVENT_PAPERS.event.make(facts);
  const title = `${paper.title}: ${event.title}`;
  return { ok: true, then: beginPaper(actor, {
    key: `event ${event.id} ${input.seen}`, title, back: `/events/${event.id}`, paper,
    keep: async (made) => {
      const { bytes, signature } = await signAs(ready, made, paper, 'Preparer', 'Prepared, and answers for what it says', now);
      const done = await handOverEvent(database(), actor, now, {
        eventId: event.id, revision: event.revision, officerId: input.officerId, versionId: rests?.version.id ?? null, signature,
        document: { id: randomUUID(), number, kind: 'event', title, format: school.paper, language: school.locale, fingerprint: facts.fingerprint, of: { eventId: event.id }, bytes: [made, bytes], data: packPaper(paper) },
      });
      return done.ok ? { ok: true, then: `/events/${event.id}` } : { ok: false, why: done.faults.map(({ message }) => message).join('. ') };
    },
  }) };
}

/** The officer signs the very file that the preparer signed, which makes it the venue's file. */
export async function signOff(actor: Actor, input: SignEventInput): Promise<Outcome> {
  const now = new Date();
  const full = await eventInFull(actor, input.eventId, now);
  if (full === null) return refused(null, NOT_THERE);
  const { event } = full;
  if (!mayOnEvent(actor, 'event.sign-as-officer', event)) return refused(null, 'You prepared it, so somebody else must check and sign it');
  const file = await waitingPaperOf(database(), schoolScope(actor), { kind: 'event', eventId: event.id });
  const last = file?.revisions[0];
  if (file === null || last === undefined || file.id !== input.documentId) return overtaken('The file has changed since you opened it. Read the new one, then sign');
  const open = openLines(full.lines).map(({ words }) => words);
  if (open.length > 0) return refused(null, `It cannot be signed while the check is open: ${open.join(' ')}`);
  if (event.officerId !== actor.personId) return refused(null, 'The file names another officer. It has to be handed over to you to be signed by you');
  const wrong = await confirmPassword(input.password);
  if (wrong !== null) return refused('password', wrong);
  const ready = await readyToSign(actor, input.password, now);
  const { bytes, signature } = await signAs(ready, new Uint8Array(last.bytes), { format: printedFormat(file.format), language: file.language }, 'Officer', 'Checked, and agreed to', now);
  const done = await signEvent(database(), actor, now, { eventId: event.id, revision: event.revision, openLines: open, signature, file: { documentId: file.id, number: file.number, before: file.revision, bytes } });
  return done.ok ? { ok: true, then: `/events/${event.id}` } : done;
}
