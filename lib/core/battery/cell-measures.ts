import { toMeterResolution } from './meter-resolution';

/** What a row of cell voltages says, in volts; undefined where it says nothing. */
export interface CellMeasures {
  readonly silentCells: number;
  readonly cellMin: number | undefined;
  readonly cellMax: number | undefined;
  readonly cellSpread: number | undefined;
}

/**
 * Lowest, highest and spread (highest minus lowest) of the cells that read something, and how many read nothing. A silent cell
 * is named by its own rule and left out of the rest, or a broken lead would look like a huge
 * difference (amendment A31). With one reading cell of several there is no difference to speak of.
 * @param volts one reading for each cell, null when the meter showed nothing
 * @param silentBelow volts under which a reading counts as none
 */
export function cellMeasures(volts: readonly (number | null)[], silentBelow: number): CellMeasures {
  const reading = volts.filter((cell) => cell !== null && cell >= silentBelow) as readonly number[];
  const silentCells = volts.length - reading.length;
  if (reading.length === 0) return { silentCells, cellMin: undefined, cellMax: undefined, cellSpread: undefined };
  const cellMin = Math.min(...reading);
  const cellMax = Math.max(...reading);
  const comparable = reading.length > 1 || volts.length === 1;
  return { silentCells, cellMin, cellMax, cellSpread: comparable ? toMeterResolution(cellMax - cellMin) : undefined };
}
