import type { PackLimits } from '@/lib/content/model';
import type { Pack } from '../pack';
import { cellField, DELIVERED_FIELD, HIT_FIELD, NOT_MEASURED_FIELD, RESISTANCE_FIELD, ROOM_TEMPERATURE_FIELD, yesNoMeasures } from './check-answers';
import { CHECK_PAGES, type CheckPageId } from './check-pages';
import { leaveAnswers } from './take-check';
import { wordsOfVerdict } from './verdict-words';

/** One page of the form, in the content's words. */
export interface CheckSheetPage {
  readonly id: CheckPageId;
  readonly title: string;
  /** how each of its steps is done */
  readonly hows: readonly { readonly title: string; readonly how: string }[];
  readonly questions: readonly { readonly name: string; readonly ask: string }[];
  /** every field of the page; what is not among them is carried along */
  readonly fields: readonly string[];
}

/** Everything the form of one pack shows. Plain data: it is drawn in the browser. */
export interface CheckSheet {
  readonly pages: readonly CheckSheetPage[];
  /** words of every measure, for the number fields */
  readonly asks: Readonly<Record<string, string>>;
  readonly leaveAnswers: Readonly<Record<string, readonly string[]>>;
  readonly leave: { readonly title: string; readonly words: string };
  readonly series: number;
}

const NUMBER_FIELDS: Readonly<Record<CheckPageId, readonly string[]>> = {
  look: [],
  listen: [],
  warmth: ['hoursSinceUse', 'packTemperature', ROOM_TEMPERATURE_FIELD],
  record: [HIT_FIELD, 'hoursSinceImpact', 'hoursSinceCharge', 'hoursFull'],
  voltage: [NOT_MEASURED_FIELD, RESISTANCE_FIELD, DELIVERED_FIELD],
};

/**
 * The form of a check for one pack.
 * @throws when the limits have no words for leaving: a fault of the content
 */
export function checkSheet(limits: PackLimits, pack: Pick<Pack, 'series' | 'secondHand'>): CheckSheet {
  const leave = wordsOfVerdict(limits, 'leave');
  if (leave === null) throw new Error('the pack limits have no words for leaving');
  const asks = Object.fromEntries((limits.check?.measures ?? []).map(({ id, ask }) => [id, ask]));
  return { pages: CHECK_PAGES.map(({ id, title }) => pageOf(limits, pack, id, title, asks)), asks, leaveAnswers: leaveAnswers(limits), leave: { title: leave.title, words: leave.words }, series: pack.series };
}

function pageOf(limits: PackLimits, pack: Pick<Pack, 'series' | 'secondHand'>, id: CheckPageId, title: string, asks: Readonly<Record<string, string>>): CheckSheetPage {
  const ids: readonly string[] = CHECK_PAGES.find((page) => page.id === id)?.steps ?? [];
  const hows = (limits.check?.steps ?? []).filter((step) => ids.includes(step.id)).map((step) => ({ title: step.title, how: step.how }));
  const questions = yesNoMeasures(limits, id, pack).map((name) => ({ name, ask: asks[name] ?? name }));
  const cells = id === 'voltage' ? Array.from({ length: pack.series }, (_, at) => cellField(at + 1)) : [];
  return { id, title, hows, questions, fields: [...questions.map(({ name }) => name), ...NUMBER_FIELDS[id], ...cells] };
}
