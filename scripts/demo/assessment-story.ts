import { addAction, closeActionOf } from '@/lib/db/assessments/actions';
import { beginAssessment } from '@/lib/db/assessments/begin-assessment';
import { changeScope } from '@/lib/db/assessments/change-scope';
import { readVersion } from '@/lib/db/assessments/read-version';
import { saveAnswers } from '@/lib/db/assessments/save-answer';
import { settleReviewOf } from '@/lib/db/assessments/settle-review';
import { scopeFingerprint } from '@/lib/assessments/version';
import { schoolScope } from '@/lib/db/scope';
import type { Answer } from '@/lib/core/document';
import { currentContent } from '@/lib/content/editions';
import { FIRST_ANSWERS, NEXT_ANSWERS, NOTES } from './assessment-answers';
import { later } from './calendar';
import { HOT_DAY } from './incident-story';
import { handOver, returned, signOff } from './signing';
import { CONTENT_VERSION, done, type Entry, type World } from './world';

const TITLE = 'Hall and brick store';

/** The assessment: prepared, signed, held to after an incident, and a next version that came back with a comment. */
export function assessmentStory(world: World): readonly Entry[] {
  const { calendar } = world;
  const kept = { first: '', next: '', line: '', rule: '' };
  return [
    { at: calendar.at(-82, '10:00'), what: 'the first version', run: async (at) => { kept.first = await begin(world, at, null); await answer(world, later(at, 5), kept.first, FIRST_ANSWERS); await visit(world, later(at, 40), kept.first); } },
    { at: calendar.at(-81, '11:00'), what: 'actions', run: async (at) => { [kept.line, kept.rule] = await addActions(world, at, kept.first); } },
    { at: calendar.at(-80, '09:10'), what: 'handed over', run: (at) => handOver(world, at, kept.first, calendar.day(26)) },
    { at: calendar.at(-79, '13:05'), what: 'signed', run: (at) => signOff(world, at, kept.first) },
    { at: calendar.at(-62, '16:00'), what: 'an action done', run: (at) => finish(world, at, kept.line, 'Line painted 2 m from the net; a helper stands there at matches.') },
    { at: calendar.at(-46, '12:00'), what: 'an action done', run: (at) => finish(world, at, kept.rule, 'Written on the card by the store: swollen, dented, uneven cells, three years.') },
    { at: calendar.at(HOT_DAY + 6, '13:00'), what: 'looked at again', run: (at) => settle(world, at, kept.first) },
    { at: calendar.at(-3, '17:00'), what: 'the next version', run: async (at) => { kept.next = await begin(world, at, kept.first); await answer(world, later(at, 5), kept.next, NEXT_ANSWERS); } },
    { at: calendar.at(-2, '08:30'), what: 'the next version handed over', run: (at) => handOver(world, at, kept.next, calendar.day(200)) },
    { at: calendar.at(-1, '10:40'), what: 'the next version returned', run: (at) => returned(world, at, kept.next, 'W-19 swelled in the store last night. Write under the store check what you found and since when it lay full, and add to the retirement rule what follows from it. Then hand it over again.') },
  ];
}

async function begin({ db, people, places, calendar }: World, at: Date, copyFromId: string | null): Promise<string> {
  const year = Number(calendar.day(0).slice(0, 4));
  const input = { siteId: places.siteId, title: TITLE, season: `${year}`, copyFromId };
  const begun = await beginAssessment(db, people.organiser, at, input, CONTENT_VERSION);
  if (!begun.ok) throw new Error(`an assessment could not be begun: ${begun.why}`);
  return begun.versionId;
}

/** Page by page, as the walk saves it; here all of them together. */
async function answer({ db, people }: World, at: Date, versionId: string, answers: Readonly<Record<string, Answer>>): Promise<void> {
  const version = await readVersion(db, schoolScope(people.organiser), versionId);
  const unknown = Object.keys(answers).filter((id) => !currentContent.questions.some((question) => question.id === id));
  if (unknown.length > 0) throw new Error(`the demo answers questions that are not asked: ${unknown.join(', ')}`);
  const sent = Object.entries(answers).map(([questionId, value]) => ({ questionId, value, notSureTicks: [], note: NOTES[questionId] ?? '', origin: 'typed' as const, seen: version?.answers.find((kept) => kept.questionId === questionId)?.revision ?? 0 }));
  done('saving answers', await saveAnswers(db, people.organiser, at, versionId, sent));
}

async function visit({ db, people, calendar }: World, at: Date, versionId: string): Promise<void> {
  const version = await readVersion(db, schoolScope(people.organiser), versionId);
  if (version === null) throw new Error('the version is not there');
  const input = { versionId, before: scopeFingerprint(version), visited: 'yes' as const, visitedOn: calendar.day(-82), visitedBy: 'Tom Ashby, with the caretaker', seen: 'Hall, bench, brick store, outdoor spot, every way out', onTrust: 'Circuit protection, as the caretaker says' };
  done('saying who was there', await changeScope(db, people.organiser, at, input));
}

/** What the result suggested, with who does it by when. Returns the two that are done soon after. */
async function addActions({ db, people, calendar }: World, at: Date, versionId: string): Promise<[string, string]> {
  const add = async (controlId: string, ownerId: string | null, ownerName: string | null, dueOn: string): Promise<string> => {
    const title = currentContent.controls.find(({ id }) => id === controlId)?.title;
    if (title === undefined) throw new Error(`the content has no control ${controlId}`);
    return done(title, await addAction(db, people.organiser, at, { versionId, controlId, stopId: null, title, details: '', ownerId, ownerName, dueOn })).id;
  };
  const { organiser, helper } = people;
  const line = await add('spectator-line', helper.personId, null, calendar.day(-60));
  const rule = await add('retire-rule', organiser.personId, null, calendar.day(-45));
  await add('response-drill', organiser.personId, null, calendar.day(-5));
  await add('hall-told', null, 'Caretaker', calendar.day(7));
  await add('trip-plan', organiser.personId, null, calendar.day(20));
  return [line, rule];
}

async function finish({ db, people }: World, at: Date, actionId: string, note: string): Promise<void> {
  done('an action', await closeActionOf(db, people.organiser, at, actionId, 'done', note));
}

/** After the hot pack the officer looks at the signed paper again before anybody charges. */
async function settle({ db, people }: World, at: Date, versionId: string): Promise<void> {
  const officer = people['safety-officer'];
  const request = await db.reviewRequest.findFirstOrThrow({ where: { ...schoolScope(officer), versionId, settledAt: null }, select: { id: true } });
  done('settling a review', await settleReviewOf(db, officer, at, { versionId, requestId: request.id, how: 'One charger with a worn plug was the cause and is out of use. What the paper assumes still holds.' }));
}
