import { rounded } from '@/lib/wording/numbers';
import { heading, type PaperSection, text } from '../paper';
import type { AssessmentFacts, Signer } from './facts';

/** Who answers for what: both signers in full, what was seen on site and what was taken on trust, whom one asked. */
export function scopeSection(facts: AssessmentFacts): PaperSection {
  const person = (who: Signer): string => [who.name, who.post, who.employer, who.telephone].filter((part) => part !== '').join(', ');
  return {
    id: 'scope', title: 'Scope and people', ownPage: true, blocks: [
      { kind: 'facts', rows: [
        { name: 'Prepared by', value: person(facts.preparer) },
        { name: 'Checked by', value: person(facts.officer) },
        { name: 'Seen on site', value: facts.visit === null ? 'not visited' : `${facts.visit.on}, by ${facts.visit.by}`, under: facts.visit === null ? 'everything here was taken on trust' : facts.visit.seen },
        { name: 'Signed for', value: facts.signedFor === 'today' ? 'the room as it is today' : `the room once this is done: ${facts.signedFor.once.join('; ')}` },
      ] },
      text('Nobody signs in both places: whoever prepared it does not check it. Where the officer is away, another officer of the school checks it, named above.', 'quiet'),
      text('It covers charging, storing, flying, carrying and giving away of packs at this place: fire, smoke, heat, impact. It does not cover the building itself, nor what the fire code, the insurer and the owner ask beyond it.'),
      { kind: 'table', caption: 'Rules and papers asked for', columns: [{ head: 'What', width: 4 }, { head: 'Asked', width: 2 }, { head: 'Answer', width: 5 }], rows: [...consulted(facts), ...facts.rulesConsulted.map((rule) => [rule.what, rule.asked, rule.answer])], empty: 'Nobody was asked. The local fire code still holds.' },
      { kind: 'table', caption: 'Attachments', columns: [{ head: 'Title', width: 5 }, { head: 'Fingerprint', width: 4 }], rows: facts.attachments.map((one) => [one.title, one.fingerprint]), empty: 'None.' },
      ...(facts.comments.length === 0 ? [] : [{ kind: 'table' as const, caption: 'Questions of the officer and answers', columns: [{ head: 'Who', width: 2 }, { head: 'When', width: 2 }, { head: 'Said', width: 7 }], rows: facts.comments.map((one) => [one.by, one.on, one.text]), empty: '' }]),
    ],
  };
}

/** Questions by which a school says whom it asked. */
const ASKED = ['team-limit-asked', 'team-limit', 'team-consent', 'team-officer'];

function consulted({ answers }: AssessmentFacts): readonly (readonly string[])[] {
  return answers.filter(({ id, standing }) => ASKED.includes(id) && standing !== 'does not apply').map((answer) => [answer.question, answer.standing === 'answered' ? 'yes' : answer.standing, [answer.answer, answer.note].filter((words) => words !== '').join('. ')]);
}

/** When the paper stops to hold, in words, and what happens then. */
export function validitySection(facts: AssessmentFacts): PaperSection {
  const { covers } = facts;
  return { id: 'validity', title: 'How long it holds', blocks: [
    text(`In force until ${facts.inForceUntil}, at most twelve months. It ends sooner, and charging stops until the officer has looked at it again, as soon as one of these is so:`),
    { kind: 'list', items: [
      { lead: `More than ${covers.packs} packs, more than ${rounded(covers.storedWh)} Wh in the store, or more than ${covers.people} people in the room while packs charge.` },
      { lead: `More than ${covers.sessions} sessions in the season.` },
      { lead: 'Another room, another place for charging or storing, other chargers, another kind of pack.' },
      { lead: 'A fire, smoke, or a swollen pack.' },
      { lead: 'Works in the building, a way out that is blocked, detectors covered or switched off.' },
      { lead: 'Another teacher in charge, or another officer.' },
      { lead: 'An acceptance on the first page that ends.' },
    ] },
    text('The officer may suspend it at any time, with a reason. A printed copy is uncontrolled: its number and its state are those shown where the file is checked.', 'quiet'),
    heading('People’s data'),
    text(facts.retention, 'quiet'),
  ] };
}
