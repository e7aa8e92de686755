import type { Grade } from '@/lib/core/result';
import { exact } from '@/lib/wording/numbers';
import { type Block, text } from '../paper';
import type { EventFacts } from './facts';
import { counted, NOT_FILLED_IN, said } from './said';

/** First page: may it go on, what was accepted for it, the day in a few figures, when it holds. */
export function coverBlocks(facts: EventFacts): readonly Block[] {
  return [answer(facts), ...acceptances(facts), whereAndWhen(facts), keyFacts(facts), holdsWhen(facts)];
}

/** Lines of the check that stand in the way: failing, or nobody knows. */
export function openChecks({ checks }: Pick<EventFacts, 'checks'>): EventFacts['checks'] {
  return checks.filter(({ state }) => state === 'failing' || state === 'not known');
}

/** What of the check was let stand, by whom. */
export function acceptedChecks({ checks }: Pick<EventFacts, 'checks'>): EventFacts['checks'] {
  return checks.filter(({ state }) => state === 'accepted');
}

function answer(facts: EventFacts): Block {
  const open = openChecks(facts).length;
  const why = [
    facts.assessment === null ? 'No signed assessment of this place stands behind this file.' : '',
    open === 0 ? '' : `${open === 1 ? 'One line of the check before it leaves is open' : `${open} lines of the check before it leaves are open`}: they stand in its section.`,
  ].filter((words) => words !== '');
  if (why.length > 0) return { kind: 'notice', presses: true, title: 'Nothing leaves and nothing is charged yet', text: why.join(' ') };
  const held = acceptedChecks(facts).length;
  return { kind: 'notice', title: held === 0 ? 'May be held as described' : `May be held as described, with ${counted(held, 'line', 'lines')} accepted`, text: 'As long as local rules, the fire service and the safety officers of venue and school say nothing else.' };
}

/** As much text of title, place and acceptances as the cover of either format takes, letters. */
const COVER_LETTERS = 800;

function acceptances(facts: EventFacts): readonly Block[] {
  const ofCheck = acceptedChecks(facts).map(({ words, accepted }) => ({ lead: `Accepted by ${accepted?.by ?? NOT_FILLED_IN}: ${words}`, text: accepted === null ? '' : `Reason: ${accepted.reason}` }));
  const ofPlace = (facts.assessment?.accepted ?? []).map((words) => ({ lead: `Accepted with the assessment: ${words}`, text: '' }));
  const all = [...ofCheck, ...ofPlace];
  if (all.length === 0) return [];
  const letters = [facts.title, facts.site.name, facts.site.address, facts.school.name, ...all.flatMap(({ lead, text: words }) => [lead, words])].reduce((sum, { length }) => sum + length, 0);
  // The cover stays one page, with room for both signatures: what does not fit is told further back, which is said.
  const fits = letters <= COVER_LETTERS;
  const short = `${[ofCheck.length === 0 ? '' : counted(ofCheck.length, 'line of the check', 'lines of the check'), ofPlace.length === 0 ? '' : counted(ofPlace.length, 'stop condition of the place', 'stop conditions of the place')].filter((words) => words !== '').join(' and ')} accepted in writing.`;
  return [fits ? { kind: 'list', small: true, items: all.map((item) => (item.text === '' ? { lead: item.lead } : item)) } : text(`${short} Each stands in full, with the reason and who agreed, in "Check before it leaves" and "Risks that remain".`, 'strong')];
}

const WORST_FIRST: readonly Grade[] = ['extreme', 'high', 'moderate', 'low'];

function worst({ assessment }: EventFacts): string {
  if (assessment === null) return 'nobody has assessed it';
  const grade = WORST_FIRST.find((one) => assessment.risks.some((risk) => risk.grade === one));
  return assessment.risks.find((risk) => risk.grade === grade)?.gradeWord ?? 'none applies';
}

function whereAndWhen({ site, when, until }: EventFacts): Block {
  return { kind: 'facts', rows: [
    { name: 'Where', value: site.name, under: said(site.address) },
    { name: 'When', value: when, under: `for this date and place only, over by ${until}` },
  ] };
}

function keyFacts(facts: EventFacts): Block {
  const { site, assessment, adults, packs } = facts;
  return { kind: 'facts', columns: 2, rows: [
    { name: 'Who comes', value: `${facts.people === null ? NOT_FILLED_IN : counted(facts.people, 'person', 'people')}, ${facts.teams === null ? `teams ${NOT_FILLED_IN}` : counted(facts.teams, 'team', 'teams')}`, under: facts.spectators === null ? `spectators ${NOT_FILLED_IN}` : counted(facts.spectators, 'spectator', 'spectators') },
    { name: 'Packs that travel', value: `${counted(packs.length, 'pack', 'packs')}, ${totalWords(facts)}` },
    { name: 'May stop the match', value: stoppers(adults.filter(({ mayStop }) => mayStop).map(({ name }) => name)) },
    { name: 'Worst grade that remains', value: worst(facts), ...(assessment === null ? {} : { under: `assessment ${assessment.number}, version ${assessment.version}, ${assessment.force}` }) },
    { name: 'In a fire call', value: said(site.emergencyNumber) },
    { name: 'This file was made', value: facts.madeOn },
  ] };
}

/** Names as long as they fit; all of them stand in the first section. */
function stoppers(names: readonly string[]): string {
  const all = names.join(', ');
  return all === '' ? NOT_FILLED_IN : all.length <= 60 ? all : `${counted(names.length, 'adult', 'adults')}, named in section 1`;
}

/** The energy of all packs; what nobody knows is said, never counted as nothing. */
export function totalWords({ totalWh, packs, packsWithoutEnergy }: Pick<EventFacts, 'totalWh' | 'packs' | 'packsWithoutEnergy'>): string {
  if (packs.length > 0 && packsWithoutEnergy === packs.length) return 'energy not known';
  const known = `${exact(Number(totalWh.toFixed(1)))} Wh`;
  return packsWithoutEnergy === 0 ? `${known} in all` : `${known} without ${counted(packsWithoutEnergy, 'pack', 'packs')} of unknown energy`;
}

function holdsWhen({ state }: EventFacts): Block {
  return state === 'draft' ? text('Not signed. This copy permits nothing.', 'presses') : text('It holds only with both signatures below, and only as long as the page for checking says so. A printed copy is uncontrolled.', 'quiet');
}
