import { at } from '@/lib/core/at';
import type { AssessmentDocument } from '@/lib/core/document';
import { exposureOf, stateOf, type Venue } from '@/lib/core/answers/venue';
import { type PhysicsModel, physicsModel } from '@/lib/core/physics-model';
import { clippedPowerMean } from '@/lib/core/statistics/clipped-lognormal';
import { compileContent, type CompiledContent } from './compiled-content';
import { countedUses, pathProduct } from './counted-uses';
import { type GradeMatrix, gradeMatrix } from './grade-matrix';
import { type RateDistribution, rateWithRecord, rememberedShapes } from './rate';
import { SeverityBook } from './severity-book';
import { SeverityCases } from './severity-cases';

/** Everything of a venue that stays while states of controls are tried. */
export interface RiskSetup {
  readonly venue: Venue;
  readonly compiled: CompiledContent;
  readonly physics: PhysicsModel;
  readonly matrix: GradeMatrix;
  readonly severities: SeverityBook;
  readonly cases: SeverityCases;
  readonly rates: readonly RateDistribution[];
  /** mean share of top events that reach each branch, by scenario and branch */
  readonly conditionals: readonly (readonly number[])[];
}

/** @throws on a fault of the content only; a checked document always gives a setup */
export function riskSetup(venue: Venue, document: Pick<AssessmentDocument, 'record' | 'matrix'>): RiskSetup {
  const compiled = compileContent(venue.content);
  const products = preventiveProductsOf(compiled, venue);
  const shapeOf = rememberedShapes();
  const physics = physicsModel(venue.content);
  return {
    venue,
    compiled,
    physics,
    matrix: gradeMatrix(venue.content, document.matrix),
    severities: new SeverityBook(venue.content),
    cases: new SeverityCases(compiled, physics),
    rates: compiled.scenarios.map(({ scenario }, index) => rateWithRecord(scenario, document.record?.[scenario.id], at(products, index), shapeOf)),
    conditionals: compiled.scenarios.map(({ branches }) => branches.map(({ branch }) => clippedPowerMean(branch.conditional.p, branch.conditional.errorFactor, 1))),
  };
}

/** E[X] of every control in the venue's states, by index. */
export function failuresOf(compiled: CompiledContent, venue: Venue): Float64Array {
  return Float64Array.from(compiled.controls, (control, index) => compiled.failures.of(index, stateOf(venue, control.id)));
}

/** Mean share of the top events that the preventive controls in place let through, 0 to 1, by scenario. */
export function preventiveProductsOf(compiled: CompiledContent, venue: Venue): readonly number[] {
  const today = failuresOf(compiled, venue);
  return compiled.scenarios.map(({ preventive }) => pathProduct(preventive, countedUses(preventive, today, compiled.controls), today));
}

/** Exposure of every scenario in this venue, in the scenario's own unit per season. */
export function exposuresOf(compiled: CompiledContent, venue: Venue): readonly number[] {
  return compiled.scenarios.map(({ scenario }) => exposureOf(venue, scenario.exposureBase));
}
