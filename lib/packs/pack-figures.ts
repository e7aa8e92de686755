import { airClass, airCarriage, type AirClass } from '@/lib/core/battery/air-carriage';
import { chargeCurrentAt1C } from '@/lib/core/battery/charging';
import { packEnergy } from '@/lib/core/battery/pack-energy';
import type { AmpereHours, Volts, WattHours } from '@/lib/units/quantity';
import type { CellTypeFacts } from './cell-types';
import type { PackDetails } from './pack';

/** What follows from a label, shown while it is typed. */
export interface PackFigures {
  /** null where the nominal voltage of such cells is not known here and no energy is printed */
  readonly energyWh: number | null;
  readonly energyFrom: 'printed' | 'computed' | null;
  /** highest charge current unless the label allows more, A */
  readonly chargeAt1C: number;
  readonly airClass: AirClass | null;
  /** how it may fly, in words; null without an energy */
  readonly air: string | null;
  /** the whole pack full, and at storage charge, V */
  readonly fullV: number | null;
  readonly storageV: number | null;
}

type LabelFigures = Pick<PackDetails, 'series' | 'parallel' | 'capacityMah' | 'printedWh'>;

/**
 * Energy, charge current at 1C, class on a passenger flight and whole-pack voltages of a sound pack. Equations and
 * sources stand with the functions of lib/core/battery.
 * @param label cells 1 or more, capacity in mAh above 0, printed energy in Wh or null
 * @param cell figures of its kind of cell
 */
export function packFigures(label: LabelFigures, cell: CellTypeFacts): PackFigures {
  const capacity = (label.capacityMah / 1000) as AmpereHours;
  const energyWh = energyOf(label, cell, capacity);
  const whole = (volts: number | null): number | null => (volts === null ? null : volts * label.series);
  return {
    energyWh,
    energyFrom: energyWh === null ? null : label.printedWh === null ? 'computed' : 'printed',
    chargeAt1C: chargeCurrentAt1C((capacity * label.parallel) as AmpereHours),
    airClass: energyWh === null ? null : airClass(energyWh),
    air: energyWh === null ? null : airCarriage(energyWh, false).why,
    fullV: whole(cell.fullV),
    storageV: whole(cell.storageV),
  };
}

function energyOf({ series, parallel, printedWh }: LabelFigures, { nominalV }: CellTypeFacts, capacity: AmpereHours): WattHours | null {
  if (nominalV === null) return printedWh as WattHours | null;
  return packEnergy({ cellsInSeries: series, rowsInParallel: parallel, capacity, printed: printedWh as WattHours | null }, nominalV as Volts);
}
