import type { ControlState } from '@/lib/content/model';
import type { BranchResult, ControlInRisk, RiskResult } from '@/lib/core/result';

/** A control as a bar across the thread of a bow tie. */
export interface BowTieBar {
  /** a figure for what stops it, a letter for what limits it; the key gives the name */
  readonly sign: string;
  readonly control: string;
  readonly title: string;
  readonly state: ControlState;
  /** powers of ten that it takes away here, or would take away if it were there; 0 or more */
  readonly decades: number;
  /** share that gets past it today, above 0 to 1 */
  readonly passing: number;
  /** absent, and among what to do first */
  readonly first: boolean;
}
export interface BowTieBranch { readonly branch: BranchResult; readonly bars: readonly BowTieBar[] }
export interface BowTie { readonly risk: RiskResult; readonly prevent: readonly BowTieBar[]; readonly branches: readonly BowTieBranch[]; readonly key: readonly BowTieBar[] }

export interface BowTieData {
  readonly risk: RiskResult;
  /** ids of the controls to do first */
  readonly first: readonly string[];
  /** mean probability of failure of each control once it is in place, by id, 0 to 1 */
  readonly inPlaceFailure: Readonly<Record<string, number>>;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * A risk as bars on threads. A control that does not apply here, or whose group counts already on that
 * thread, is left out: it takes nothing away there.
 */
export function bowTie({ risk, first, inPlaceFailure }: BowTieData): BowTie {
  const signs = new Map<string, string>();
  const sign = (use: ControlInRisk): string => {
    const id = `${use.part} ${use.control}`;
    const known = signs.get(id) ?? nextSign(use.part, [...signs.keys()].filter((key) => key.startsWith(use.part)).length);
    signs.set(id, known);
    return known;
  };
  const bar = (use: ControlInRisk): BowTieBar => barOf(use, sign(use), first, inPlaceFailure);
  const uses = risk.controls.filter((use) => use.state !== 'not applicable' && (use.counts || use.state === 'absent'));
  const prevent = uses.filter((use) => use.part === 'prevent').map(bar);
  const branches = risk.branches.map((branch) => ({ branch, bars: uses.filter((use) => use.branch === branch.id).map(bar) }));
  return { risk, prevent, branches, key: firstOfEach([...prevent, ...branches.flatMap((one) => one.bars)]) };
}

function barOf(use: ControlInRisk, sign: string, first: readonly string[], inPlaceFailure: BowTieData['inPlaceFailure']): BowTieBar {
  const absent = use.state === 'absent';
  const failure = absent ? 1 - use.reach * (1 - (inPlaceFailure[use.control] ?? 1)) : use.effectiveFailure;
  return {
    sign,
    control: use.control,
    title: use.title,
    state: use.state,
    decades: decadesTaken(failure),
    passing: absent ? 1 : use.effectiveFailure,
    first: absent && first.includes(use.control),
  };
}

/** Powers of ten that a control takes away: −log10 of the share that gets past it. */
export function decadesTaken(effectiveFailure: number): number {
  return Math.max(0, -Math.log10(Math.max(effectiveFailure, Number.MIN_VALUE)));
}

function nextSign(part: ControlInRisk['part'], index: number): string {
  if (part === 'prevent') return String(index + 1);
  const letter = LETTERS[index];
  if (letter === undefined) throw new Error(`a risk has more than ${LETTERS.length} limiting controls`);
  return letter;
}

function firstOfEach(bars: readonly BowTieBar[]): readonly BowTieBar[] {
  return bars.filter((bar, index) => bars.findIndex((other) => other.sign === bar.sign) === index);
}
