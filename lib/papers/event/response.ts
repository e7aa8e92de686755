import { type ResponsePicture, responsePicture } from '@/lib/charts/pictures/response-pictures';
import type { FilledGuidance } from '@/lib/content/fill-guidance';
import { type Block, type PaperSection, type PicturedStep, type StepSize, text } from '../paper';
import type { EventFacts } from './facts';
import { guidanceBlocks, guidanceOf } from './guidance-blocks';
import { AREA_WORDS, said } from './said';

/** A drawing for each line of the text for smoke, in its order. */
const PICTURES: readonly ResponsePicture[] = ['everybody out', 'shut the door', 'raise the alarm', 'call from outside', 'meet and count'];

/** What is done at smoke, the same on the card that hangs on the wall and in the file. */
export function smokeSteps(facts: EventFacts, size: StepSize): readonly Block[] {
  const [smoke] = guidanceOf(facts, ['smoke']);
  if (smoke === undefined) return [text('This edition has no guidance texts.', 'quiet')];
  return [{ kind: 'steps', size, items: picturedLines(smoke) }];
}

function picturedLines({ lines }: FilledGuidance): readonly PicturedStep[] {
  if (lines.length !== PICTURES.length) throw new Error(`the text for smoke has ${lines.length} lines and ${PICTURES.length} drawings`);
  return lines.flatMap((line, index) => PICTURES.slice(index, index + 1).map((picture) => ({ picture: responsePicture(picture), ...line })));
}

/** Titles of the sign that comes before smoke, and the first thing not to do. */
export function beforeSmoke(facts: EventFacts): { readonly title: string; readonly text: string } | null {
  const [hot] = guidanceOf(facts, ['hot-no-smoke']);
  const [first] = hot?.lines ?? [];
  return hot === undefined || first === undefined ? null : { title: hot.title, text: `${first.lead} ${first.text ?? ''}`.trim() };
}

/** The pages to read at once, and those for the crew that comes. */
export function responseSections(facts: EventFacts): readonly PaperSection[] {
  const before = beforeSmoke(facts);
  return [
    { id: 'response', title: 'If something happens', blocks: [
      ...(before === null ? [] : [{ kind: 'notice' as const, presses: true, title: before.title, text: `${before.text} The same steps.` }]),
      ...smokeSteps(facts, 'plain'),
      ...guidanceBlocks(facts, ['somebody-missing']),
      text('To be confirmed by the local fire service and first-aid trainer.', 'quiet'),
    ] },
    { id: 'ill', title: 'Somebody is ill, and what to say', ownPage: true, blocks: guidanceBlocks(facts, ['first-aid', 'caller']) },
    { id: 'suspect', title: 'A pack that is not right, and after a crash', blocks: guidanceBlocks(facts, ['swollen-cool', 'after-crash']) },
    fireService(facts),
  ];
}

/** Where packs are, by the names of the places. */
function placesOf({ areas }: EventFacts['site']): string {
  const held = areas.filter(({ use }) => use === 'charging' || use === 'storage' || use === 'isolation').map(({ use, name }) => `${name} (${AREA_WORDS[use]})`);
  return said(held.length === 0 ? null : held.join('; '));
}

/** For the crew that comes: where, what, how much. */
function fireService({ site, packs, totalWh, packsWithoutEnergy, people, spectators }: EventFacts): PaperSection {
  const voltages = [...new Set(packs.map(({ fullVoltage }) => fullVoltage))].sort();
  return { id: 'fire-service', title: 'For the fire service', blocks: [
    text('Lithium-polymer packs. They make poisonous smoke, can start again hours later, and need cooling.', 'strong'),
    { kind: 'facts', rows: [
      { name: 'Address, gate, room', value: said(site.address) },
      { name: 'Packs on the site', value: `${packs.length}, ${Number(totalWh.toFixed(1))} Wh${packsWithoutEnergy === 0 ? '' : `, of ${packsWithoutEnergy} the energy is not known`}`, under: voltages.join('; ') },
      { name: 'People', value: `${people === null ? 'team and helpers not counted' : `${people} of the teams`}, ${spectators === null ? 'spectators not counted' : `${spectators} spectators`}` },
      { name: 'Meeting place', value: said(site.meetingPlace), under: `second, if smoke comes: ${said(site.secondMeetingPlace)}` },
      { name: 'Keys', value: said(site.caretaker), under: said(site.caretakerPhone) },
      { name: 'Where they charge and lie', value: placesOf(site), under: 'drawing in section 3; mark it by hand on the copy at the door' },
      { name: 'Hours later', value: 'can flare again, also when it looks out', under: 'nobody goes in before you say so' },
    ] },
  ] };
}

