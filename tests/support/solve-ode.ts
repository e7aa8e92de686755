import { createRequire } from 'node:module';

interface Solution { readonly outcome: number; readonly y: readonly number[] }
interface OdeSolver {
  relativeTolerance: number;
  absoluteTolerance: number;
  solve(slope: (x: number, y: readonly number[]) => readonly number[], from: number, start: readonly number[], to: number): Solution;
}

// odex ships TypeScript that does not compile under our strict settings, so its types are stated here
const require = createRequire(import.meta.url);
const { Solver } = require('odex') as { readonly Solver: new (equations: number) => OdeSolver };

/** Solves dy/dx = slope(x, y) numerically (Gragg–Bulirsch–Stoer) to about ten digits. */
export function solveOde(slope: (x: number, y: number) => number, from: number, start: number, to: number): number {
  const solver = new Solver(1);
  solver.relativeTolerance = 1e-12;
  solver.absoluteTolerance = 1e-12;
  const { outcome, y } = solver.solve((x, values) => [slope(x, values[0] ?? Number.NaN)], from, [start], to);
  if (outcome !== 0) throw new Error('the solver did not get to the end');
  return y[0] ?? Number.NaN;
}
