import type { Content } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { at } from '@/lib/core/at';
import type { AssessmentDocument } from '@/lib/core/document';
import type { GradeOrNone } from '@/lib/core/result';
import { rankedIndices } from '@/lib/core/risk/ranking';
import { riskSetup } from '@/lib/core/risk/risk-setup';
import { stopsOf } from '@/lib/core/risk/stops';
import { threeStates } from '@/lib/core/risk/three-states';
import { batteryFires } from './score';

export interface QuickRisk {
  readonly id: string;
  readonly title: string;
  readonly rank: number;
  readonly grade: GradeOrNone;
  readonly plannedGrade: GradeOrNone;
  readonly topFrequencyMean: number;
  readonly harmMean: number;
}
export interface QuickScore {
  readonly totalHarm: number;
  readonly plannedHarm: number;
  readonly batteryFiresPerSeason: number;
  readonly risks: readonly QuickRisk[];
  readonly stops: readonly { readonly id: string; readonly title: string }[];
}

/**
 * The closed values only, without draws: what can be shown at once while somebody changes an answer. The
 * figures are the very ones `score` gives for the same document.
 */
export function quickScore(content: Content, document: AssessmentDocument): QuickScore {
  const venue = resolveVenue(content, document);
  const setup = riskSetup(venue, document);
  const states = threeStates(setup, document.planned ?? []);
  const order = rankedIndices(states.today, content.scenarios.map((scenario) => scenario.id));
  return {
    totalHarm: states.today.totalHarm,
    plannedHarm: states.planned.totalHarm,
    batteryFiresPerSeason: batteryFires(setup, states.today),
    risks: order.map((index, position): QuickRisk => {
      const { id, title } = at(content.scenarios, index);
      const today = at(states.today.risks, index);
      return { id, title, rank: position + 1, grade: today.grade, plannedGrade: at(states.planned.risks, index).grade, topFrequencyMean: today.topFrequency, harmMean: today.harm };
    }),
    stops: stopsOf(venue, setup.physics).map(({ id, title }) => ({ id, title })),
  };
}
