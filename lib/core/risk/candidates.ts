import type { ControlState, InputMove, InputValue } from '@/lib/content/model';
import { resolveExposures } from '@/lib/core/answers/resolve-exposures';
import { stateOf, type Venue, withStates } from '@/lib/core/answers/venue';
import { countedUses } from './counted-uses';
import { failuresOf, type RiskSetup } from './risk-setup';
import type { SeverityCase } from './severity';

/** A control that is not in place and could be: absent, partly, or nobody is sure. */
export interface Candidate {
  readonly control: string;
  readonly index: number;
  readonly state: ControlState;
  /** hours plus points of the money band, at least 1 (amendment A25) */
  readonly effort: number;
}

/** Candidates in the order of the content; `not applicable` is none (amendment A5). */
export function candidatesOf(venue: Venue): readonly Candidate[] {
  const points = new Map(venue.content.moneyBands.map((band) => [band.band, band.points]));
  return venue.content.controls.flatMap((control, index) => {
    const state = stateOf(venue, control.id);
    if (state === 'in place' || state === 'not applicable') return [];
    const money = points.get(control.effort.moneyBand);
    if (money === undefined) throw new Error(`no money band ${control.effort.moneyBand}`);
    return [{ control: control.id, index, state, effort: Math.max(1, control.effort.hours + money) }];
  });
}

/**
 * The venue with some controls put in place. A control that moves inputs moves them too, and only for the
 * better, and exposures are worked out again from them: nobody charges overnight any more, so those charges
 * are watched ones now. Counted exposures stand. The first edition has no moves, so there an action moves
 * a state alone (amendment A49).
 */
export function inPlace(venue: Venue, controls: readonly string[]): Venue {
  const open = controls.filter((control) => stateOf(venue, control) !== 'not applicable' && stateOf(venue, control) !== 'in place');
  const changed = withStates(venue, new Map(open.map((control): [string, ControlState] => [control, 'in place'])));
  const moves = open.flatMap((control) => venue.content.controls.find((one) => one.id === control)?.moves ?? []);
  if (moves.length === 0) return changed;
  const inputs = new Map(venue.inputs);
  for (const move of moves) if (applies(move, inputs.get(move.input))) inputs.set(move.input, move.to);
  return { ...changed, inputs, exposures: resolveExposures(venue.content, inputs, venue.countedExposures) };
}

function applies(move: InputMove, now: InputValue | undefined): boolean {
  if (move.only === 'always') return true;
  if (typeof now !== 'number' || typeof move.to !== 'number') throw new Error(`input ${move.input} cannot be compared`);
  return move.only === 'if lower' ? now < move.to : now > move.to;
}

/** How one path changes when a control is put in place: a use that joins, a use that leaves, another severity. */
export interface PathChange {
  /** position of the branch among all branches of all scenarios */
  readonly path: number;
  readonly joins: { readonly control: number; readonly reach: number } | null;
  readonly leaves: { readonly control: number; readonly reach: number } | null;
  readonly severityBefore: SeverityCase;
  readonly severityAfter: SeverityCase;
}

/** What putting one control in place changes, path by path; paths that stay as they are are left out. */
export function pathChanges(setup: RiskSetup, candidate: Candidate): readonly PathChange[] {
  const { compiled, venue } = setup;
  const after = inPlace(venue, [candidate.control]);
  const failureBefore = failuresOf(compiled, venue);
  const failureAfter = Float64Array.from(failureBefore);
  failureAfter[candidate.index] = compiled.failures.of(candidate.index, 'in place');
  const casesBefore = setup.cases.of(venue).flat();
  const casesAfter = setup.cases.of(after).flat();
  const paths = compiled.scenarios.flatMap(({ branches }) => branches.map((branch) => branch.path));
  return paths.flatMap((uses, path): readonly PathChange[] => {
    const severityBefore = casesBefore[path];
    const severityAfter = casesAfter[path];
    if (severityBefore === undefined || severityAfter === undefined) throw new Error(`path ${path} has no severity`);
    const sameSeverity = severityBefore.key === severityAfter.key;
    if (sameSeverity && uses.every((use) => use.control !== candidate.index)) return [];
    const before = countedUses(uses, failureBefore, compiled.controls);
    const now = countedUses(uses, failureAfter, compiled.controls);
    const used = now.find((position) => uses[position]?.control === candidate.index);
    const left = used === undefined ? undefined : before.find((position) => !now.includes(position)) ?? (before.includes(used) ? used : undefined);
    if (used === undefined && sameSeverity) return [];
    return [{ path, joins: appliedAt(uses, used), leaves: appliedAt(uses, left), severityBefore, severityAfter }];
  });
}

function appliedAt(uses: readonly { readonly control: number; readonly reach: number }[], position: number | undefined): PathChange['joins'] {
  const use = position === undefined ? undefined : uses[position];
  return use === undefined ? null : { control: use.control, reach: use.reach };
}
