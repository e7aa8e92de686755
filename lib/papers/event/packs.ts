import { exact } from '@/lib/wording/numbers';
import { type Block, type Column, type PaperSection, text } from '../paper';
import { totalWords } from './cover';
import type { EventFacts, EventPackFact } from './facts';
import { counted } from './said';

/** The packs that travel, each with its energy, and all of it together. */
export function packSection(facts: EventFacts): PaperSection {
  return { id: 'packs', title: 'Packs that travel', blocks: packBlocks(facts) };
}

/** The same for the list that stands by itself. */
export function packBlocks(facts: EventFacts): readonly Block[] {
  const { packs, travel } = facts;
  const byAir = travel.byAir;
  return [
    text(`${counted(packs.length, 'pack', 'packs')}, ${totalWords(facts)}. ${kinds(packs)}`.trim(), 'strong'),
    {
      kind: 'table', caption: 'Every pack, with what is marked on it',
      columns: [...columnsOf(packs), ...(byAir ? [{ head: 'By air', width: 3 }] : [])],
      rows: packs.map((pack) => [...row(pack, severalVoltages(packs)), ...(byAir ? [pack.air ?? 'not looked at'] : [])]),
      empty: 'No pack was picked.',
    },
    text('Counted out and counted in: the number that goes home is the number that came, or somebody says where the others are.', 'quiet'),
  ];
}

/** Where all packs have one full voltage it is said once, above the table. */
const severalVoltages = (packs: readonly EventPackFact[]): boolean => new Set(packs.map(({ fullVoltage }) => fullVoltage)).size > 1;

const columnsOf = (packs: readonly EventPackFact[]): readonly Column[] => [
  { head: 'Label', width: 1.7 }, { head: severalVoltages(packs) ? 'Kind, full voltage' : 'Kind', width: 3 }, { head: 'Wh', width: 1.1, align: 'right' }, { head: 'State', width: 1.4 }, { head: 'Last check', width: 2.6 }, { head: 'Charge', width: 2.4 },
];

const row = ({ label, kind, fullVoltage, energyWh, state, lastCheck, charge }: EventPackFact, several: boolean) => [label, several ? { text: kind, under: fullVoltage } : kind, energyWh === null ? 'not known' : exact(Number(energyWh.toFixed(2))), state, lastCheck, charge];

/** How many of each kind, as a venue asks it. */
function kinds(packs: readonly EventPackFact[]): string {
  const counts = new Map<string, number>();
  for (const { kind, fullVoltage } of packs) counts.set(`${kind}, full voltage: ${fullVoltage}`, (counts.get(`${kind}, full voltage: ${fullVoltage}`) ?? 0) + 1);
  return counts.size === 0 ? '' : `${[...counts].map(([kind, count]) => `${count} of ${kind}`).join('; ')}.`;
}
