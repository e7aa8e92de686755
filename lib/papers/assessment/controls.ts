import type { Control, ControlState } from '@/lib/content/model';
import { stateWord } from '@/lib/wording/states';
import { type Block, heading, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';

const TIERS: readonly { readonly tier: Control['tier']; readonly title: string }[] = [
  { tier: 'eliminate', title: 'Take the danger away' },
  { tier: 'substitute', title: 'Use something less dangerous' },
  { tier: 'engineer', title: 'Things that hold without anybody thinking of them' },
  { tier: 'administer', title: 'Rules and people' },
  { tier: 'protect', title: 'Worn or held' },
];

/** Controls by how far they can be relied on: what needs nobody's attention first. What is not whole says what would be. */
export function controlSection(facts: AssessmentFacts, states: ReadonlyMap<string, ControlState>): PaperSection {
  const stateOf = (id: string): ControlState => states.get(id) ?? 'not sure';
  const blocks = TIERS.flatMap(({ tier, title }): readonly Block[] => {
    const controls = facts.content.controls.filter((control) => control.tier === tier && stateOf(control.id) !== 'not applicable');
    const [held, lacking] = [controls.filter(({ id }) => stateOf(id) === 'in place'), controls.filter(({ id }) => stateOf(id) !== 'in place')];
    if (controls.length === 0) return [];
    return [
      heading(title),
      ...(held.length === 0 ? [] : [text('In place:'), { kind: 'list' as const, small: true, columns: 2 as const, items: held.map((control) => ({ lead: control.title })) }]),
      ...(lacking.length === 0 ? [] : [text('Not in place, or not wholly, with what good looks like:'), { kind: 'list' as const, small: true, items: lacking.map((control) => ({ lead: `${control.title}: ${stateWord(stateOf(control.id))}.`, text: control.goodLooksLike })) }]),
    ];
  });
  return { id: 'controls', title: 'Controls', blocks: [text('Partly counts for less than in place. Not sure never counts as good.'), ...blocks] };
}
