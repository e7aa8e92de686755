import { type Block, heading, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** What the figures rest on and what they do not say. */
export function basisSection({ result, content, edition, logEnd }: AssessmentFacts): PaperSection {
  return { id: 'basis', title: 'What the figures rest on', blocks: [
    text('A screening aid. Rates, failures and reaches are our judgement unless a source stands beside them; smoke is taken as mixed with the air of the room; soot and other gases are not counted; all of it is uncertain by factors, which the ranges show. Numbers rank, they do not permit.'),
    { kind: 'facts', rows: [
      { name: 'Content', value: `edition ${edition}, version ${content.version}` },
      { name: 'Calculation', value: `engine ${result.engineVersion}, ${result.draws} draws, seed ${result.seed}` },
      { name: 'Fingerprint of what was worked out', value: inGroups(result.inputHash) },
      { name: 'The school’s log when this was made', value: logEnd === null ? 'noted when it is signed' : `entry ${logEnd.number}`, ...(logEnd === null ? {} : { under: `${inGroups(logEnd.hash)}. Nothing before it can be altered without this number failing to fit.` }) },
    ] },
    { kind: 'table', caption: 'What most widens the result', columns: [{ head: 'What', width: 5 }, { head: 'If', width: 3 }, { head: 'Harm, low to high', width: 3 }], rows: result.doubt.slice(0, 8).map((one) => [one.title, one.between, `${short(one.harmLow)} to ${short(one.harmHigh)}`]), empty: 'Nothing does.' },
    ownRecord(result.risks),
    heading('Assumptions and sources'),
    { kind: 'list', small: true, items: bySource(printed(result.assumptions)) },
    text(judged(result.assumptions, edition), 'quiet'),
  ] };
}

/** What the school logged moves the figures both ways, so it stands beside what was assumed before it. */
function ownRecord(risks: AssessmentFacts['result']['risks']): Block {
  const rows = risks.flatMap(({ title, exposureTitle, learning }) => (learning === null ? [] : [[title, `${learning.record.events} in ${short(learning.record.exposure)} (${exposureTitle})`, `${short(learning.prior.mean)} before, ${short(learning.posterior.mean)} with it`]]));
  return { kind: 'table', caption: 'The school’s own record in the figures', columns: [{ head: 'Risk', width: 4 }, { head: 'Logged', width: 4 }, { head: 'How often each time, with no control', width: 4 }], rows, empty: 'Nothing was logged at this place yet: the figures rest on what was assumed alone.' };
}

/** Some hundred figures of ours would hide the few that have a source; they are counted, and named where they stand. */
const JUDGED_ALIKE = /^(reach|pfd|conditional|fireShare)\./;

type Assumptions = AssessmentFacts['result']['assumptions'];

const printed = (assumptions: Assumptions): Assumptions => assumptions.filter((one) => !JUDGED_ALIKE.test(one.id));

function judged(assumptions: Assumptions, edition: number): string {
  const count = (kind: string): number => assumptions.filter((one) => one.id.startsWith(`${kind}.`)).length;
  return `Not printed one by one: how often each of ${count('pfd')} controls fails, on what share of cases it acts (${count('reach')} figures), what follows how often (${count('conditional')}), and what share of events is a fire (${count('fireShare')}). They are edition ${edition} of the content, most of them our judgement, each with its kind and basis in the open method.`;
}

/** Figures of one kind and one source together: each is named once, and the source as well. */
function bySource(assumptions: Assumptions): readonly { readonly lead: string; readonly text: string }[] {
  const groups = new Map<string, string[]>();
  for (const one of assumptions) {
    const key = `${capital(one.kind)}.\n${capital(sourceOf(one))}:`;
    const figure = `${one.what.replace(NO_CONTROL, '')} ${typeof one.value === 'number' ? short(one.value) : one.value}${one.unit === '' || one.unit === '-' ? '' : ` ${one.unit}`}${doubtOf(one)}`;
    groups.set(key, [...(groups.get(key) ?? []), figure]);
  }
  return [...groups].map(([key, figures]) => { const [lead = '', source = ''] = key.split('\n'); return { lead, text: `${source} ${figures.join('; ')}.` }; });
}

/** Said once, before all of them. */
const NO_CONTROL = ': how often with no control';

/** How each rate and each number of the season was come by stands in the open method; here they stand together. */
function sourceOf({ id, source }: Assumptions[number]): string {
  if (id.startsWith('rate.')) return 'how often with no control in place; ENGINE section 6 and its amendments';
  return id.startsWith('exposure.') ? source.split(';').slice(0, 2).join(';') : source;
}

function doubtOf({ id, source }: Assumptions[number]): string {
  const [factor] = id.startsWith('rate.') ? (/error factor \d+/.exec(source) ?? []) : [];
  return factor === undefined ? '' : ` (${factor})`;
}

/** To be read out and to be broken over lines. */
const inGroups = (hash: string): string => hash.match(/.{1,8}/g)?.join(' ') ?? '';
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const short = (value: number): string => String(Number(value.toPrecision(3)));
