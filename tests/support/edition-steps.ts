import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Branch, Content, ControlUse, Scenario, SeverityRule } from '@/lib/content/model';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { AssessmentDocument } from '@/lib/core/document';
import { secondDocument } from './edition-2-venues';
import { referenceDocument, type ReferenceVenue } from './reference-venues';

/** What the second edition changed, in the order in which the changes are switched on. */
export const CHANGES = ['neighbours', 'bin and outlet', 'left alone', 'joined packs', 'vehicle', 'answers', 'added controls', 'rates'] as const;
export type Change = (typeof CHANGES)[number];

export interface Stage { readonly content: Content; readonly document: AssessmentDocument }

/**
 * A room of the second edition with some of its changes switched off: what they put in is taken out again,
 * all else stays. With all of them off the figures are those of the first edition.
 */
export function stageOf(venue: ReferenceVenue, on: readonly Change[]): Stage {
  return {
    content: CHANGES.reduce((content, change) => (on.includes(change) ? content : without(content, change)), edition2),
    document: CHANGES.reduce((document, change) => (on.includes(change) ? document : asBefore(document, venue, change)), secondDocument(venue)),
  };
}

function without(content: Content, change: Change): Content {
  switch (change) {
    case 'neighbours': return withBranches(content, (branch) => ({ ...branch, severity: shared(branch.severity, undefined) }));
    case 'bin and outlet': return withBranches(content, (branch, scenario) => (['waste-fire', 'overloaded-circuit'].includes(scenario.id) ? { ...branch, severity: earlier(scenario, branch)?.severity ?? branch.severity } : branch));
    case 'left alone': return { ...content, exposures: content.exposures.map((one) => (one.id === 'watchedCharges' ? { ...one, formula: 'charges' } : one.id === 'unwatchedCharges' ? { ...one, formula: 'charges * 0' } : one)) };
    case 'added controls': return withUses(content, (uses) => uses.filter((use) => isOld(use.control)));
    case 'rates': return withBranches({ ...content, scenarios: content.scenarios.map(withEarlierRate) }, (branch, scenario) => ({ ...branch, conditional: earlier(scenario, branch)?.conditional ?? branch.conditional }));
    case 'joined packs':
    case 'vehicle':
    case 'answers': return content;
  }
}

function asBefore(document: AssessmentDocument, venue: ReferenceVenue, change: Change): AssessmentDocument {
  const before = resolveVenue(edition1, referenceDocument(venue));
  switch (change) {
    case 'joined packs': return { ...document, inputs: { ...document.inputs, packsPerOutput: 1 } };
    case 'vehicle': return { ...document, inputs: { ...document.inputs, ...Object.fromEntries(['vehicleVolume', 'vehicleAch', 'vehicleEvac'].map((id) => [id, before.inputs.get(id) ?? 0])) } };
    case 'answers': return { ...document, states: { ...Object.fromEntries(before.states), ...document.states } };
    case 'neighbours':
    case 'bin and outlet':
    case 'left alone':
    case 'added controls':
    case 'rates': return document;
  }
}

const isOld = (control: string): boolean => edition1.controls.some((one) => one.id === control);

/** The scenario that a scenario of the second edition came from; charges left alone were counted with the others. */
const scenarioBefore = (id: string): Scenario | undefined => edition1.scenarios.find((one) => one.id === (id === 'charge-unwatched' ? 'charge-runaway' : id));
const withEarlierRate = (scenario: Scenario): Scenario => ({ ...scenario, rate: scenarioBefore(scenario.id)?.rate ?? scenario.rate });
const earlier = (scenario: Scenario, branch: Branch): Branch | undefined => edition1.scenarios.find((one) => one.id === scenario.id)?.branches.find((one) => one.id === branch.id);
const shared = (severity: SeverityRule, sharedBy: readonly string[] | undefined): SeverityRule => ('from' in severity && severity.from === 'smoke' ? { ...severity, sharedBy } : severity);

function withBranches(content: Content, change: (branch: Branch, scenario: Scenario) => Branch): Content {
  return { ...content, scenarios: content.scenarios.map((scenario) => ({ ...scenario, branches: scenario.branches.map((branch) => change(branch, scenario)) })) };
}

function withUses(content: Content, change: (uses: readonly ControlUse[]) => readonly ControlUse[]): Content {
  const changed = { ...content, scenarios: content.scenarios.map((scenario) => ({ ...scenario, preventive: change(scenario.preventive) })) };
  return withBranches(changed, (branch) => ({ ...branch, mitigating: change(branch.mitigating) }));
}
