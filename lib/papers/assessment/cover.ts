import type { Grade } from '@/lib/core/result';
import { onceInWords, onceRangeWords } from '@/lib/wording/frequency';
import { gradeRule, gradeWord } from '@/lib/wording/grades';
import { rounded } from '@/lib/wording/numbers';
import { type Block, text } from '../paper';
import type { AssessmentFacts } from './facts';

const WORST_FIRST: readonly Grade[] = ['extreme', 'high', 'moderate', 'low'];

/** First page: what it comes to, under which conditions, until when. Acceptances stand here, not further back. */
export function coverBlocks(facts: AssessmentFacts): readonly Block[] {
  return [answer(facts), ...conditions(facts), keyFacts(facts), holdsWhen(facts)];
}

/** Stop conditions that hold and that no acceptance covers. */
function openStops(facts: AssessmentFacts): AssessmentFacts['result']['stops'] {
  return facts.result.stops.filter((stop) => !facts.acceptances.some((one) => one.stop === stop.id));
}

function worstGrade({ result }: Pick<AssessmentFacts, 'result'>, of: 'grade' | 'plannedGrade'): Grade | null {
  return WORST_FIRST.find((grade) => result.risks.some((risk) => risk[of] === grade)) ?? null;
}

function answer(facts: AssessmentFacts): Block {
  const open = openStops(facts).length;
  if (open > 0) return { kind: 'notice', presses: true, title: 'Do not charge here yet', text: `${open === 1 ? 'One stop condition holds' : `${open} stop conditions hold`}. A stop says do not start, whatever the grades.` };
  if (worstGrade(facts, 'grade') === 'extreme' && facts.signedFor === 'today') return { kind: 'notice', presses: true, title: 'Do not charge here yet', text: 'A risk that remains is extreme.' };
  if (facts.signedFor !== 'today') return { kind: 'notice', title: 'May be used once this is done', text: `No charging before: ${facts.signedFor.once.join('; ')}.` };
  const held = facts.acceptances.length;
  return { kind: 'notice', title: held === 0 ? 'May be used as described' : `May be used as described, under ${held === 1 ? 'one condition' : `${held} conditions`}`, text: 'As long as local rules, the fire service and the officer say nothing else.' };
}

/** Acceptances as fully as the cover has room: each with what is done instead, else their titles, else how many. */
function conditions(facts: AssessmentFacts): readonly Block[] {
  const { acceptances } = facts;
  if (acceptances.length === 0) return [];
  const inFull = acceptances.map((one) => ({ lead: `${acceptedBy(one)}: ${stopTitle(facts, one)}.`, text: [one.replacedBy === '' ? '' : `Instead: ${one.replacedBy}`, one.paper === null ? '' : `Paper: ${one.paper}.`].filter((words) => words !== '').join(' ') }));
  const titles = [...new Set(acceptances.map(acceptedBy))].map((by) => ({ lead: `${by}:`, text: `${acceptances.filter((one) => acceptedBy(one) === by).map((one) => stopTitle(facts, one)).join('; ')}. What is done instead stands in section 3.` }));
  const counted = [{ lead: `${acceptances.length} stop conditions are accepted in writing.`, text: 'Each stands in section 3, with who accepted it, until when, and what is done instead.' }];
  const items = [inFull, titles].find((list) => linesOf(list) <= COVER_LINES) ?? counted;
  return [{ kind: 'list', small: acceptances.length > 1, items }];
}

type Accepted = AssessmentFacts['acceptances'][number];

const acceptedBy = ({ by, until }: Accepted): string => `Accepted by ${by}${until === null ? '' : ` until ${until}`}`;
const stopTitle = ({ result, content }: AssessmentFacts, { stop }: Accepted): string => [...result.stops, ...content.stops].find(({ id }) => id === stop)?.title ?? stop;

/** The cover stays one page, with room for both signatures: as many lines of acceptances as the smaller format takes. */
const COVER_LINES = 7;
/** Letters of a small line, on the short side. */
const LINE_LETTERS = 88;
const linesOf = (items: readonly { readonly lead: string; readonly text: string }[]): number => items.reduce((sum, { lead, text: words }) => sum + Math.ceil((lead.length + 1 + words.length) / LINE_LETTERS), 0);

function keyFacts(facts: AssessmentFacts): Block {
  const { result } = facts;
  const [now, after] = [worstGrade(facts, 'grade'), worstGrade(facts, 'plannedGrade')];
  const word = (grade: Grade | null): string => (grade === null ? 'none applies' : gradeWord(grade, result.matrix.gradeWords[grade]));
  return { kind: 'facts', columns: 2, rows: [
    { name: 'Worst grade that remains', value: word(now), under: now === null ? undefined : gradeRule(now) },
    { name: 'Once the open actions are done', value: word(after) },
    { name: 'A battery fire of any kind', value: onceInWords(result.batteryFiresPerSeason), under: `harm in all ${rounded(result.totalHarm)} points, ${rounded(result.inherentHarm)} with nothing done` },
    { name: 'Most harm', value: result.risks[0]?.title ?? 'none', under: result.risks[0] === undefined ? undefined : onceRangeWords(result.risks[0].frequency) },
    { name: 'Stop conditions', value: openStops(facts).length === 0 ? 'none open' : `${openStops(facts).length} open`, under: facts.acceptances.length === 0 ? undefined : `${facts.acceptances.length} accepted in writing, above` },
    { name: 'In force until', value: facts.inForceUntil, under: 'or until what it assumes no longer holds' },
    { name: 'Covers at most', value: `${facts.covers.packs} packs`, under: `${rounded(facts.covers.storedWh)} Wh in the store, ${facts.covers.sessions} sessions, ${facts.covers.people} people in the room` },
  ].map(({ under, ...row }) => (under === undefined ? row : { ...row, under })) };
}

function holdsWhen({ state }: AssessmentFacts): Block {
  return state === 'draft' ? text('Not signed. This copy permits nothing.', 'presses') : text('It holds only with both signatures below, and only as long as the page for checking says so.', 'quiet');
}
