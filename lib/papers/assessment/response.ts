import { fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidanceTogether } from '@/lib/content/guidance-together';
import { numberInput, type Venue } from '@/lib/core/answers/venue';
import { rounded, whole } from '@/lib/wording/numbers';
import { stateWord } from '@/lib/wording/states';
import { type Block, heading, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

/** What is done when something happens, each situation on its own, with the school's own number and places. */
export function responseSections(facts: AssessmentFacts, venue: Venue): readonly PaperSection[] {
  return [
    { id: 'response', title: 'If something happens', ownPage: true, blocks: [text('To be confirmed by the local fire service and first-aid trainer. Hang this page beside the charging table and the store.', 'quiet'), ...situations(facts, venue, ['smoke', 'somebody-missing', 'first-aid'])] },
    fireService(facts, venue),
    { id: 'suspect', title: 'A pack that is not right', ownPage: true, blocks: situations(facts, venue, ['swollen-cool', 'after-crash']) },
    { id: 'after-fire', title: 'After a fire', blocks: situations(facts, venue, ['after-fire']).slice(1) },
  ];
}

/** @throws when two of the texts must never stand together: a fault of ours */
function situations({ content }: AssessmentFacts, venue: Venue, ids: readonly string[]): readonly Block[] {
  const { guidance } = content;
  if (guidance === undefined) return [text('This edition has no guidance texts.', 'quiet')];
  const values = Object.fromEntries(guidance.fields.flatMap((field) => {
    const value = field.input === null ? undefined : venue.inputs.get(field.input);
    return typeof value === 'string' ? [[field.id, value]] : [];
  }));
  const words = guidanceWords(guidance.fields, values);
  return guidanceTogether(guidance, ids).flatMap((one): readonly Block[] => {
    const filled = fillGuidance(one, words);
    return [heading(filled.title), { kind: 'list', ordered: filled.form === 'steps', items: filled.lines.map(({ lead, text: rest }) => (rest === undefined ? { lead } : { lead, text: rest })) }];
  });
}

/** One page for the crew that comes: where, what, how much, who needs help. */
function fireService(facts: AssessmentFacts, venue: Venue): PaperSection {
  const said = (input: string): string => { const value = venue.inputs.get(input); return typeof value === 'string' && value.trim() !== '' ? value : 'NOT FILLED IN'; };
  const figure = (input: string): number => numberInput(venue, input);
  const yes = (input: string, words: string): string => (figure(input) === 1 ? words : 'none named');
  const state = (control: string, words: string): string => { const held = venue.states.get(control); return held === 'in place' ? words : held === 'not applicable' ? 'not applicable' : stateWord(held ?? 'not sure'); };
  const { battery } = facts.result;
  return {
    id: 'fire-service', title: 'For the fire service', ownPage: true,
    blocks: [
      text('Lithium-polymer packs. They make poisonous smoke, can start again hours later, and need cooling.', 'strong'),
      { kind: 'facts', rows: [
        { name: 'Address, gate, room', value: said('siteAddress') },
        { name: 'Number to call', value: said('localNumber') },
        { name: 'Meeting place', value: said('meetingPoint'), under: `second, if smoke comes: ${said('secondMeetingPoint')}` },
        { name: 'Packs', value: `${whole(figure('packs'))} packs of ${rounded(battery.packWh)} Wh`, under: `at most ${whole(figure('packsOnTable'))} on charge, ${whole(figure('packsStored'))} in the store, ${rounded(battery.storedWh)} Wh` },
        { name: 'Full voltage of a cell', value: voltages(facts) },
        { name: 'Store', value: figure('storageOutdoor') === 1 ? 'outdoors' : 'indoors', under: `${whole(figure('packsPerLotStorage'))} packs touch` },
        { name: 'People who need help to leave', value: yes('needHelp', 'yes, see the meeting place') },
        { name: 'Asthma, heart or lungs', value: yes('needAir', 'yes') },
        { name: 'People beside or above', value: `${whole(figure('neighboursStore'))} by the store, ${whole(figure('neighboursCharging'))} by the charging room`, under: said('neighboursWhen') },
        { name: 'Detectors', value: (['Charging', 'Store', 'Arena'] as const).some((area) => figure(`detectionOff${area}`) === 1) ? 'covered or off at times' : 'not covered or switched off' },
        { name: 'Switch for the chargers', value: state('remote-switch', 'by the door, turns all of them off'), under: 'only if it is on the way' },
        { name: 'Sprinklers', value: state('sprinkler', 'in the room') },
        { name: 'Keys', value: facts.keyHolder === '' ? 'NOT FILLED IN' : facts.keyHolder },
        { name: 'Hours later', value: 'can flare again, also when it looks out', under: 'nobody goes in before you say so' },
        { name: 'Fire water', value: 'holds poisonous salts', under: 'tell us whether it has to be kept out of the drains' },
        { name: 'Plan, other hazards', value: '', under: 'on the copy by the door: to be written here by hand' },
      ] },
    ],
  };
}

/** As the packs of the register are marked; what is not marked is said too. */
function voltages({ packs }: AssessmentFacts): string {
  const kinds = [...new Set(packs.map((pack) => pack.fullVoltage))].sort();
  return kinds.length === 0 ? 'no pack is in the register' : kinds.join('; ');
}
