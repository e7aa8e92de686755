import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { ControlState, ControlUse } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';
import { quickScore } from '@/lib/core/quick-score';
import { meanFailure } from '@/lib/core/risk/mean-failure';
import { CHANGES, type Change, stageOf, type Stage } from './edition-steps';
import { REFERENCE_VENUES, type ReferenceVenue } from './reference-venues';

/** What a change is called in docs/editions.md. */
const WORDS: Readonly<Record<Change, string>> = {
  neighbours: 'people of other rooms share the smoke',
  'bin and outlet': 'a bin is no arena, an outlet burns like one pack',
  'left alone': 'charges left alone are counted apart',
  'joined packs': 'packs joined on one output burn together',
  vehicle: 'the vehicle is asked for by its kind',
  answers: 'old controls as the new questions read them',
  'added controls': 'the fifteen controls that were added, as answered',
  rates: 'rates and shares that allow for them',
};
const figure = (value: number): string => String(Number(value.toPrecision(4)));
const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

export const ADDED: readonly string[] = edition2.controls.map(({ id }) => id).filter((id) => !edition1.controls.some((one) => one.id === id));

/** Total harm, or battery fires a season, of each room with one change more in each row. */
export function stepRows(of: 'totalHarm' | 'batteryFiresPerSeason'): readonly string[] {
  return [undefined, ...CHANGES].map((change, count) => {
    const figures = REFERENCE_VENUES.map((venue) => scored(stageOf(venue, CHANGES.slice(0, count)))[of]);
    return row([change === undefined ? 'the first edition' : WORDS[change], ...figures.map(figure)]);
  });
}

/** Total harm of a room with the added controls in one state, before and after rates allow for them. */
export function addedRows(): readonly string[] {
  const stages = (venue: ReferenceVenue) => [stageOf(venue, CHANGES.filter((change) => change !== 'rates')), stageOf(venue, CHANGES)];
  return REFERENCE_VENUES.map((venue) => row([venue, ...stages(venue).flatMap((stage) =>
    (['absent', 'not sure', undefined, 'in place'] as const).map((state) => figure(scored(withAdded(stage, state)).totalHarm)))]));
}

function withAdded({ content, document }: Stage, state: ControlState | undefined): Stage {
  const states = state === undefined ? {} : Object.fromEntries(ADDED.map((id) => [id, state]));
  return { content, document: { ...document, states: { ...document.states, ...states } } satisfies AssessmentDocument };
}

const scored = ({ content, document }: Stage) => quickScore(content, document);

/** Mean effective failure of the added controls among some uses, while nobody is sure of any of them. */
export function letThrough(uses: readonly ControlUse[]): number {
  return uses.filter(({ control }) => ADDED.includes(control)).reduce((product, use) => {
    const control = edition2.controls.find(({ id }) => id === use.control);
    return control === undefined ? product : product * (1 - use.reach * (1 - meanFailure(control, 'not sure')));
  }, 1);
}

/** Each rate that moved: the first edition's, what the added controls let through, and the second's. */
export function rateRows(): readonly string[] {
  return edition2.scenarios.flatMap(({ id, rate, preventive }) => {
    const before = edition1.scenarios.find((one) => one.id === id)?.rate.mean;
    return before === undefined || before === rate.mean ? [] : [row([id, figure(before), letThrough(preventive).toFixed(2), figure(rate.mean)])];
  });
}
