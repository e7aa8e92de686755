import { text, type Block, type Paper } from './paper';

/** What an incident paper is made of, in words already. */
export interface IncidentPaperFacts {
  readonly number: string;
  readonly incidentNumber: number;
  /** what it was, in a few words */
  readonly title: string;
  readonly school: string;
  readonly when: string;
  readonly state: string;
  readonly format: Paper['format'];
  readonly language: string;
  readonly madeAt: string;
  readonly fingerprint: string;
  readonly verifyAt: string;
  readonly twinAt: string;
  /** end of the school's log when the paper was made; null in a preview */
  readonly logEnd: { readonly number: number; readonly hash: string } | null;
  readonly caution: string;
  readonly recordedBy: string;
  readonly facts: readonly { readonly name: string; readonly value: string; /** what was said first, and why it was corrected */ readonly corrections: readonly string[] }[];
  readonly packs: readonly { readonly label: string; readonly state: string; readonly place: string }[];
  readonly persons: readonly { readonly who: string; readonly hurt: string; readonly breathed: string; readonly firstAid: string }[];
  /** photos that are kept with the record: how many, and the hash of each */
  readonly photoHashes: readonly string[];
  readonly followUps: readonly { readonly title: string; readonly words: string; readonly by: string }[];
  readonly actions: readonly { readonly title: string; readonly owner: string; readonly due: string; readonly state: string }[];
  /** signed assessments it asked a review of */
  readonly reviews: readonly string[];
  /** what still stands in the way of closing; empty when it is closed */
  readonly open: readonly string[];
  readonly officer: { readonly name: string; readonly post: string };
}

/** The paper of one incident, signed by the safety officer: the record, what was corrected, what follows. */
export function incidentPaper(facts: IncidentPaperFacts): Paper {
  const { number, incidentNumber, title, school, when, state, format, language, madeAt, fingerprint, verifyAt, twinAt, officer } = facts;
  const short = title.length <= TITLE_LETTERS;
  const fits = facts.facts.reduce((sum, fact) => sum + linesOf(fact), 0) <= COVER_LINES;
  return {
    kind: 'incident', number, title: short ? `Incident ${incidentNumber}: ${title}` : `Incident ${incidentNumber}`, subtitle: `${short ? '' : `${title}. `}${school}, ${when}. State: ${state}.`, format, language, author: school, madeAt, fingerprint, verifyAt, twinAt,
    cover: [...openNotice(facts), { kind: 'facts', rows: fits ? facts.facts.map(inFull) : facts.facts.map(inShort) }, text(`Recorded by ${facts.recordedBy}.`), text(facts.caution, 'quiet')],
    sections: [
      ...(fits ? [] : [{ id: 'record', title: 'The record in full', blocks: [{ kind: 'facts' as const, rows: facts.facts.filter(isLong).map(inFull) }] }]),
      { id: 'packs', title: 'Packs, and where each one is', blocks: [packsTable(facts)] },
      { id: 'people', title: 'Who was affected', blocks: [text('Roles and initials. No names stand on this paper.', 'quiet'), personsTable(facts), text(photoWords(facts.photoHashes))] },
      { id: 'afterwards', title: 'Afterwards', blocks: [followUpList(facts), actionsTable(facts), text(reviewWords(facts.reviews)), text(logWords(facts.logEnd), 'quiet')] },
    ],
    signatures: [{ field: 'Officer', title: 'Safety officer', name: officer.name, post: officer.post }],
  };
}

/** A longer title takes too much of the cover in its large letters. */
const TITLE_LETTERS = 60;

type Fact = IncidentPaperFacts['facts'][number];

/** Lines of facts that the cover of either format takes, with the signature below; letters of a line, on the short side. */
const COVER_LINES = 24;
const LINE_LETTERS = 58;
const linesOf = ({ value, corrections }: Fact): number => Math.max(1, Math.ceil(value.length / LINE_LETTERS)) + Math.ceil(corrections.join(' ').length / LINE_LETTERS);

/** What takes more than a line does not stay on a cover that is too full. */
const isLong = (fact: Fact): boolean => linesOf(fact) > 1;
const inFull = ({ name, value, corrections }: Fact) => (corrections.length === 0 ? { name, value } : { name, value, under: corrections.join(' ') });
const inShort = (fact: Fact) => (isLong(fact) ? { name: fact.name, value: fact.corrections.length === 0 ? 'in section 1' : 'in section 1, with what was corrected' } : inFull(fact));

function openNotice({ open }: IncidentPaperFacts): readonly Block[] {
  return open.length === 0 ? [] : [{ kind: 'notice', title: 'Not closed yet', text: `${open.join('. ')}.`, presses: true }];
}

function packsTable({ packs }: IncidentPaperFacts): Block {
  return { kind: 'table', caption: 'Packs of this incident', columns: [{ head: 'Pack', width: 2 }, { head: 'State in the register', width: 2 }, { head: 'Where it is', width: 4 }], rows: packs.map(({ label, state, place }) => [label, state, place]), empty: 'No pack of the register was linked.' };
}

function personsTable({ persons }: IncidentPaperFacts): Block {
  return { kind: 'table', caption: 'People who were affected', columns: [{ head: 'Who', width: 3 }, { head: 'Hurt', width: 1 }, { head: 'Breathed smoke', width: 2 }, { head: 'First aid, doctor', width: 4 }], rows: persons.map(({ who, hurt, breathed, firstAid }) => [who, hurt, breathed, firstAid]), empty: 'Nobody is written down.' };
}

function photoWords(hashes: readonly string[]): string {
  if (hashes.length === 0) return 'No photo is kept with the record.';
  return `${hashes.length === 1 ? 'One photo is' : `${hashes.length} photos are`} kept with the record (SHA-256: ${hashes.join(', ')}).`;
}

function followUpList({ followUps }: IncidentPaperFacts): Block {
  if (followUps.length === 0) return text('Nothing was added yet.');
  return { kind: 'list', items: followUps.map(({ title, words, by }) => ({ lead: `${title}: ${words}`, text: by })) };
}

function actionsTable({ actions }: IncidentPaperFacts): Block {
  return { kind: 'table', caption: 'Corrective actions', columns: [{ head: 'To do', width: 5 }, { head: 'Who', width: 2 }, { head: 'Due', width: 2 }, { head: 'State', width: 1 }], rows: actions.map(({ title, owner, due, state }) => [title, owner, due, state]), empty: 'No corrective action.' };
}

function reviewWords(reviews: readonly string[]): string {
  return reviews.length === 0 ? 'It contradicts no signed assessment.' : `It contradicts these signed assessments, which are marked for review: ${reviews.join('; ')}.`;
}

function logWords(end: IncidentPaperFacts['logEnd']): string {
  if (end === null) return 'Where the school’s log ends is noted when it is signed.';
  return `The school’s log when this was made: entry ${end.number}, ${end.hash.match(/.{1,8}/g)?.join(' ') ?? ''}. Nothing before it can be altered without this number failing to fit.`;
}
