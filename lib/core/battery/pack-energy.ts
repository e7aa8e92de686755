import type { AmpereHours, Volts, WattHours } from '@/lib/units/quantity';

/** What a pack's label says. */
export interface PackLabel {
  readonly cellsInSeries: number;
  /** rows of cells side by side; 1 for nearly every small pack */
  readonly rowsInParallel: number;
  /** of one row, above 0 */
  readonly capacity: AmpereHours;
  /** energy printed on the label, null when it is not */
  readonly printed: WattHours | null;
}

/**
 * Rated energy of a pack: E = S · P · nominal cell voltage · C. A figure printed on the label wins.
 * Source: definition used by the transport rules, volts times ampere-hours (REFERENCES F.1, READ-P).
 * @param nominalCell nominal voltage of one cell, 3.7 V for LiPo
 */
export function packEnergy(label: PackLabel, nominalCell: Volts): WattHours {
  return label.printed ?? ((label.cellsInSeries * label.rowsInParallel * nominalCell * label.capacity) as WattHours);
}
