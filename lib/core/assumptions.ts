import type { Content } from '@/lib/content/model';
import { exposureOf, stateOf, type Venue } from '@/lib/core/answers/venue';
import { isUsed } from '@/lib/core/physics-model';
import type { Assumption } from '@/lib/core/result';
import type { GradeMatrix } from '@/lib/core/risk/grade-matrix';

const JUDGED = 'our judgement';

/**
 * Every number of ours that the result rests on, with its range, what kind it is and where it comes from.
 * Figures of controls that do not apply here and of scenarios without exposure are left out.
 */
export function assumptionsOf(venue: Venue, matrix: GradeMatrix): readonly Assumption[] {
  const { content } = venue;
  return [...physics(content), ...thresholds(content), ...rates(venue), ...failures(venue), ...reaches(venue), ...exposures(venue), ...judgements(content, matrix)];
}

function physics(content: Content): readonly Assumption[] {
  const spreads = content.physics.map((one): Assumption => ({ id: `physics.${one.id}`, what: words(one.id), value: one.mid, low: one.low, high: one.high, unit: one.unit, kind: one.kind, source: one.source }));
  // listing what no figure rests on would claim a use it has not
  const constants = content.constants.filter(isUsed).map((one): Assumption => ({ id: `constant.${one.id}`, what: words(one.id), value: one.value, low: one.low, high: one.high, unit: one.unit, kind: one.kind, source: one.source }));
  return [...spreads, ...constants];
}

function thresholds(content: Content): readonly Assumption[] {
  const aegl = (['HF', 'CO'] as const).flatMap((gas) => Object.entries(content.aegl[gas]).filter(([level]) => level !== '1').flatMap(([level, values]) =>
    values.map((value: number, index: number): Assumption => fixed(`aegl.${gas}.${level}.${content.aegl.durationsMin[index]}`, `${gas}, AEGL-${level} at ${content.aegl.durationsMin[index]} min`, value, 'ppm', content.aegl.kind, content.aegl.source))));
  const others = (['HF', 'CO'] as const).flatMap((gas) => [
    fixed(`idlh.${gas}`, `${gas}, immediately dangerous to life or health`, content.idlh[gas], 'ppm', content.idlh.kind, content.idlh.source),
    fixed(`reentry.${gas}`, `${gas}, level to which the room clears`, content.reentry[gas], 'ppm', content.reentry.kind, content.reentry.source),
  ]);
  return [...aegl, ...others];
}

function rates(venue: Venue): readonly Assumption[] {
  return usedScenarios(venue).flatMap((scenario) => [
    spread(`rate.${scenario.id}`, `${scenario.title}: how often with no control`, scenario.rate.mean, scenario.rate.errorFactor, `for each of the ${exposureTitle(venue, scenario.exposureBase)}`, scenario.rate.kind, scenario.rate.basis),
    fixed(`fireShare.${scenario.id}`, `${scenario.title}: share that is a battery fire`, scenario.fireShare, 'share', JUDGED, 'not every top event is a fire'),
    ...scenario.branches.map((branch) => spread(`conditional.${scenario.id}.${branch.id}`, `${scenario.title}: ${branch.title}`, branch.conditional.p, branch.conditional.errorFactor, 'share of events', branch.conditional.kind, branch.conditional.basis)),
  ]);
}

function failures(venue: Venue): readonly Assumption[] {
  return venue.content.controls.filter((control) => stateOf(venue, control.id) !== 'not applicable')
    .map((control) => spread(`pfd.${control.id}`, `${control.title}: fails on demand when in place`, control.pfd, control.errorFactor, 'probability', control.kind, control.basis));
}

function exposureTitle({ content }: Venue, base: string): string {
  return content.exposures.find((exposure) => exposure.id === base)?.title ?? base;
}

function reaches(venue: Venue): readonly Assumption[] {
  const title = (id: string): string => venue.content.controls.find((control) => control.id === id)?.title ?? id;
  const applies = (control: string): boolean => stateOf(venue, control) !== 'not applicable';
  return usedScenarios(venue).flatMap((scenario) => [
    ...scenario.preventive.filter((use) => applies(use.control)).map((use) => fixed(`reach.${scenario.id}.${use.control}`, `${scenario.title}: share of causes on which this can act: ${title(use.control)}`, use.reach, 'share', JUDGED, 'no published base')),
    ...scenario.branches.flatMap((branch) => branch.mitigating.filter((use) => applies(use.control)).map((use) =>
      fixed(`reach.${scenario.id}.${branch.id}.${use.control}`, `${scenario.title}, ${branch.title}: share of cases on which this can act: ${title(use.control)}`, use.reach, 'share', JUDGED, 'no published base'))),
  ]);
}

function exposures(venue: Venue): readonly Assumption[] {
  const used = new Set(usedScenarios(venue).map((scenario) => scenario.exposureBase));
  return venue.content.exposures.filter((exposure) => used.has(exposure.id))
    .map((exposure) => fixed(`exposure.${exposure.id}`, exposure.title, exposureOf(venue, exposure.id), 'in a season', exposure.kind, exposure.basis));
}

function judgements(content: Content, matrix: GradeMatrix): readonly Assumption[] {
  const weights = Object.entries(content.harmWeights).map(([severity, weight]) => fixed(`harmWeight.${severity}`, `harm points of one event of class ${severity}`, weight, 'points', JUDGED, 'one decade a class'));
  const bands = matrix.levels.slice(1).map((level) => fixed(`band.${level.level}`, `likelihood "${level.word}" begins`, level.from, 'events a season', JUDGED, matrix.title));
  const containment = content.packCountRule.perContainment.map((one, index): Assumption => ({ id: `packs.${index + 1}`, what: `packs that burn together: ${one.state}`, value: one.mid, low: one.low, high: one.high, unit: 'packs', kind: one.kind, source: one.basis }));
  return [...weights, ...bands, ...containment];
}

function usedScenarios(venue: Venue) {
  return venue.content.scenarios.filter((scenario) => exposureOf(venue, scenario.exposureBase) > 0);
}

function fixed(id: string, what: string, value: number, unit: string, kind: string, source: string): Assumption {
  return { id, what, value, low: null, high: null, unit, kind, source };
}

function spread(id: string, what: string, value: number, errorFactor: number, unit: string, kind: string, source: string): Assumption {
  return { id, what, value, low: value / errorFactor, high: Math.min(unit.startsWith('for each') ? Number.POSITIVE_INFINITY : 1, value * errorFactor), unit, kind, source: `${source}; error factor ${errorFactor}` };
}

/** "peakHeatRelease" as a person would write it. */
function words(id: string): string {
  return id.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/\b(?!HF|CO)([A-Z])(?=[a-z])/g, (letter) => letter.toLowerCase());
}
