import 'server-only';
import { can } from '@/lib/access/can';
import { judgeCaretakerLink, type SendQuestionsInput } from '@/lib/assessments/caretaker';
import { type CaretakerLink, listCaretakerLinks, revokeCaretakerLink, sendQuestions } from '@/lib/db/assessments/caretaker-links';
import { schoolScope } from '@/lib/db/scope';
import { keeperQuestions } from '@/lib/questionnaire/pages';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { currentSchool } from '../people/current-school';
import { publicAddress } from '../people/public-address';
import { caretakerToken, sealOfCaretakerToken } from './caretaker-token';
import { readOpenVersion } from './open-version';

export interface SentLink {
  readonly id: string;
  readonly forWhom: string;
  readonly questions: number;
  readonly byName: string;
  readonly until: string;
  readonly answered: string | null;
  /** the link itself while it works; else why it does not */
  readonly address: string | null;
  readonly ended: string | null;
}

/** Sends questions for the building's caretaker to somebody without an account. */
export async function sendToCaretaker(actor: Actor, input: SendQuestionsInput): Promise<Outcome> {
  const open = await readOpenVersion(actor, input.versionId);
  if (open === null) return refused(null, 'This assessment is not there');
  if (!can(actor.role, 'assessment.send-questions', { actor, on: { schoolId: actor.schoolId, byId: open.version.preparedById } })) return refused(null, `${open.version.preparedByName} prepares it, and sends its questions`);
  const offered = new Set(keeperQuestions(open.walk.resolution.path).map(({ id }) => id));
  const questions = input.questions.filter((id) => offered.has(id));
  if (questions.length === 0) return refused('questions', 'Tick at least one question');
  const sent = await sendQuestions(database(), actor, new Date(), { ...input, questions }, (id) => sealOfCaretakerToken(caretakerToken(id)));
  return sent.ok ? { ok: true, done: `Made. The link for ${input.forWhom} stands under the links below: copy it and pass it on.` } : refused(null, sent.why);
}

/** Takes a link back. What was answered by it stays. */
export async function takeLinkBack(actor: Actor, { versionId, linkId }: { readonly versionId: string; readonly linkId: string }): Promise<Outcome> {
  const open = await readOpenVersion(actor, versionId);
  if (open === null) return refused(null, 'This assessment is not there');
  if (!can(actor.role, 'assessment.send-questions', { actor, on: { schoolId: actor.schoolId, byId: open.version.preparedById } })) return refused(null, `${open.version.preparedByName} prepares it, and takes its links back`);
  const done = await revokeCaretakerLink(database(), actor, new Date(), linkId);
  return done.ok ? { ok: true, done: 'Taken back. The link no longer works; what was answered by it stays.' } : refused(null, done.why);
}

/** The links of a version, the latest first. Their secrets are made anew, for those who may send them. */
export async function sentLinks(actor: Actor, versionId: string): Promise<readonly SentLink[]> {
  const school = await currentSchool(actor);
  const links = await listCaretakerLinks(database(), schoolScope(actor), versionId);
  return Promise.all(links.map(async (link) => sentLink(link, (at) => momentWords(at, school))));
}

async function sentLink(link: CaretakerLink, words: (at: Date) => string): Promise<SentLink> {
  const verdict = judgeCaretakerLink(link, new Date());
  return {
    id: link.id, forWhom: link.forWhom, questions: link.questionIds.length, byName: link.byName, until: words(link.expiresAt),
    answered: link.answeredAt === null ? null : `${link.answeredByName ?? link.forWhom}, ${words(link.answeredAt)}`,
    address: verdict.ok ? await publicAddress(`/caretaker/${caretakerToken(link.id)}`) : null,
    ended: link.revokedAt !== null ? 'taken back' : verdict.ok ? null : 'ended',
  };
}
