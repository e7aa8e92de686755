import { can } from '@/lib/access/can';
import type { PaperFact, SignedFact, TodayFacts } from './facts';
import { daysWords, now, soon, type TodayItem } from './item';

/** A month: long enough to prepare the next version and have it checked. */
const NEAR_DAYS = 30;

/** Papers that need the reader: one line for each, the gravest thing about it first. */
export function paperItems({ papers, role }: Pick<TodayFacts, 'papers' | 'role'>): readonly TodayItem[] {
  if (!can(role, 'assessment.read')) return papers.flatMap(withoutPaper);
  return papers.flatMap((paper) => (paper.standing === null ? onItsWay(paper) : signed(paper, paper.standing, role)));
}

/** Whoever may not read papers is told all the same when one does not hold: they charge packs too. */
function withoutPaper({ id, name, standing }: PaperFact): readonly TodayItem[] {
  const door = { href: '/sessions' as const, verb: 'See the sessions' };
  if (standing === null) return [];
  if (!stillHolds(standing)) return [now({ id: `no-charging-${id}`, title: 'Nobody charges for now', why: `${name} does not hold. Ask the organiser or the safety officer.`, ...door })];
  return standing.force === 'review asked' ? [now({ id: `ask-first-${id}`, title: 'Ask before anybody charges', why: `${name} is under review, and the safety officer has not looked at it yet.`, ...door })] : [];
}

/** Not suspended, not run out, and nothing it rests on has ended. */
export function stillHolds({ force, acceptances }: Pick<SignedFact, 'force' | 'acceptances'>): boolean {
  return force !== 'suspended' && force !== 'run out' && acceptances.every(({ daysLeft }) => daysLeft >= 0);
}

function onItsWay({ id, name, state, isMine, isForMe, preparer, officer, preparerSigned }: PaperFact): readonly TodayItem[] {
  const result = `/assessments/${id}/result` as const;
  if (state === 'returned' && isMine) return [now({ id: `returned-${id}`, title: `${name} came back with comments`, why: 'Answer them, change what is to be changed, and hand it over again.', href: `/assessments/${id}`, verb: 'Read the comments' })];
  if (state === 'with-officer' && isMine && !preparerSigned) return [now({ id: `sign-again-${id}`, title: `Sign ${name} once more`, why: `${officer ?? 'The officer'} has decided on a stop condition, which stands on the paper. It cannot be signed off before you have signed it as it is now.`, href: result, verb: 'Read and sign' })];
  if (state === 'with-officer' && isForMe && preparerSigned) return [now({ id: `check-${id}`, title: `Check ${name}`, why: `${preparer} has handed it over to you. Sign it, or return it with what is to be changed.`, href: result, verb: 'Check it' })];
  if (state === 'draft' && isMine) return [soon({ id: `draft-${id}`, title: `Go on with ${name}`, why: 'A draft. Nothing is lost when you stop.', href: `/assessments/${id}/walk`, verb: 'Go on' })];
  return [];
}

function signed({ id, name, preparer, officer }: PaperFact, standing: SignedFact, role: TodayFacts['role']): readonly TodayItem[] {
  const settles = can(role, 'assessment.settle-review');
  const link = { href: `/assessments/${id}/result` as const, verb: 'Open the paper' };
  const drifts = standing.drifts.join(' ');
  const ended = standing.acceptances.filter(({ daysLeft }) => daysLeft < 0);
  switch (standing.force) {
    case 'suspended': return [now({ id: `suspended-${id}`, title: `Nobody charges: ${name} is suspended`, why: `${standing.reason ?? ''} ${settles ? 'Lift it when what it was for is settled.' : 'A safety officer lifts it.'}`.trim(), ...link })];
    case 'run out': return [now({ id: `run-out-${id}`, title: `Nobody charges: the time of ${name} has ended`, why: `It held until ${standing.until ?? 'a day nobody named'}. ${preparer} begins the next version as a copy and hands it over.`, ...link })];
    case 'review asked': return [settles
      ? now({ id: `review-${id}`, title: `Look at ${name} again`, why: [`${standing.reason ?? 'Something'} speaks against it. Settle it, suspend it, or ask for a next version.`, drifts].join(' ').trim(), ...link, verb: 'Look at it' })
      : now({ id: `review-${id}`, title: `Ask before anybody charges: ${name} is under review`, why: [`${standing.reason ?? 'Something'} speaks against it, and ${officer ?? 'the officer'} has not looked at it yet.`, drifts].join(' ').trim(), ...link })];
    case 'in force': break;
  }
  if (ended.length > 0) return [now({ id: `acceptance-${id}`, title: `Nobody charges: what was accepted in ${name} has ended`, why: `${ended.map(({ stop, until }) => `${stop}, until ${until}`).join('; ')}. Settle it, or have the officer decide anew.`, ...link })];
  if (drifts !== '') return [now({ id: `drift-${id}`, title: `${name} no longer covers what you have`, why: drifts, ...link })];
  return near(id, name, standing, link);
}

function near(id: string, name: string, { daysLeft, until, acceptances }: SignedFact, link: Pick<TodayItem, 'href' | 'verb'>): readonly TodayItem[] {
  const ending = acceptances.filter((one) => one.daysLeft <= NEAR_DAYS);
  return [
    ...(daysLeft !== null && daysLeft <= NEAR_DAYS ? [soon({ id: `review-date-${id}`, title: `${name} ends ${daysWords(daysLeft)}`, why: `It holds until ${until ?? ''}. Begin the next version as a copy, so that the officer has time to check it.`, ...link })] : []),
    ...(ending.length === 0 ? [] : [soon({ id: `accepted-${id}`, title: `Accepted for a time in ${name}`, why: ending.map((one) => `${one.stop}: ends ${daysWords(one.daysLeft)}`).join('. '), ...link })]),
  ];
}
