import controls from './edition-1/controls.json';
import edition from './edition-1/edition.json';
import inputs from './edition-1/inputs.json';
import packs from './edition-1/packs.json';
import physics from './edition-1/physics.json';
import questions from './edition-1/questions.json';
import scenarios from './edition-1/scenarios.json';
import stops from './edition-1/stops.json';
import { asContent } from './schema';

/** The first edition, published and therefore never changed: a test holds its fingerprint. */
export const edition1 = asContent({
  format: edition.format,
  version: edition.version,
  note: edition.note,
  ranges: controls.ranges,
  groups: controls.groups,
  controls: controls.controls,
  moneyBands: controls.moneyBands,
  effortRule: controls.effortRule,
  severityScale: scenarios.severityScale,
  harmWeights: scenarios.harmWeights,
  matrices: scenarios.matrices,
  inputs: inputs.inputs,
  exposures: inputs.exposures,
  scenarios: scenarios.scenarios,
  physics: physics.physics,
  constants: physics.constants,
  models: physics.models,
  aegl: physics.aegl,
  idlh: physics.idlh,
  reentry: physics.reentry,
  smokeRule: physics.smokeRule,
  heatRule: physics.heatRule,
  packCountRule: physics.packCountRule,
  packLimits: packs.packLimits,
  defaultEffortBudget: controls.defaultEffortBudget,
  stateRules: controls.stateRules,
  sections: questions.sections,
  questions: questions.questions,
  stops: stops.stops,
});
