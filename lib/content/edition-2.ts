import controls from './edition-2/controls.json';
import edition from './edition-2/edition.json';
import inputs from './edition-2/inputs.json';
import packs from './edition-2/packs.json';
import physics from './edition-2/physics.json';
import questions from './edition-2/questions.json';
import scenarios from './edition-2/scenarios.json';
import stops from './edition-2/stops.json';
import { guidance2 } from './guidance-2';
import { asContent } from './schema';

/** The second edition. Ids of the first stay, so that its documents can be read; what they leave open counts as not answered. */
export const edition2 = asContent({
  format: edition.format,
  edition: edition.edition,
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
  tableMatrices: physics.tableMatrices,
  inputs: inputs.inputs,
  exposures: inputs.exposures,
  scenarios: scenarios.scenarios,
  physics: physics.physics,
  constants: physics.constants,
  models: physics.models,
  airClasses: physics.airClasses,
  restVoltage: physics.restVoltage,
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
  pages: questions.pages,
  questions: questions.questions,
  stops: stops.stops,
  guidance: guidance2,
});
