import type { CsvColumn } from '@/lib/csv/write-csv';
import { CELL_TYPES, type CellTypeId } from './cell-types';
import type { Pack } from './pack';
import type { PackInput } from './pack-input';
import { stateWords } from './states/pack-states';

export interface PackColumn {
  readonly field: keyof PackInput;
  /** written into exports and the empty table */
  readonly head: string;
  /** other heads that are understood; capitals, blanks and punctuation do not count */
  readonly also: readonly string[];
  readonly needed: boolean;
  readonly cell: (pack: Pack) => string | number | null;
}

/** Full voltages as people write them in a table, by the cell type they mean; the first is the one written. */
export const CELL_TYPE_WORDS: Readonly<Record<CellTypeId, readonly [string, ...string[]]>> = {
  'full-4-20': ['4.20', '4.2', '4.20 v', '4.2 v'],
  'full-4-35': ['4.35', '4.35 v', 'hv', 'high voltage'],
  'not-marked': ['not marked', 'none', 'unmarked'],
  'full-other': ['other', 'another voltage'],
  'other-chemistry': ['other chemistry', 'life', 'lifepo4', 'li-ion'],
};

export const SECOND_HAND_WORDS = { yes: ['yes', 'y', 'second-hand', 'gift'], no: ['no', 'n', 'new'], 'not sure': ['not sure', '?', 'unknown'] } as const;

const column = (field: keyof PackInput, head: string, also: readonly string[], cell: PackColumn['cell'], needed = false): PackColumn => ({ field, head, also, cell, needed });

/** The columns of a table of packs, in the order they are written. */
export const PACK_COLUMNS: readonly PackColumn[] = [
  column('label', 'Label', ['pack', 'name', 'number', 'id'], (pack) => pack.label, true),
  column('series', 'Cells in series', ['cells', 's', 'series', 'cell count'], (pack) => pack.series, true),
  column('parallel', 'Cells in parallel', ['p', 'parallel'], (pack) => pack.parallel),
  column('capacityMah', 'Capacity, mAh', ['capacity', 'mah'], (pack) => pack.capacityMah, true),
  column('cRating', 'C rating', ['c', 'discharge rating'], (pack) => pack.cRating),
  column('printedWh', 'Printed energy, Wh', ['wh', 'energy', 'wh printed', 'energy wh'], (pack) => pack.printedWh),
  column('cellType', 'Full voltage of a cell', ['full voltage', 'cell type', 'v per cell'], (pack) => (isCellType(pack.cellType) ? CELL_TYPE_WORDS[pack.cellType][0] : pack.cellType), true),
  column('connector', 'Connector', ['plug'], (pack) => pack.connector),
  column('maker', 'Maker', ['brand', 'manufacturer'], (pack) => pack.maker),
  column('seller', 'Seller', ['shop', 'bought from', 'supplier'], (pack) => pack.seller),
  column('batch', 'Batch', ['lot'], (pack) => pack.batch),
  column('secondHand', 'Second-hand', ['used', 'gift'], (pack) => (pack.secondHand === null ? 'not sure' : pack.secondHand ? 'yes' : 'no'), true),
  column('boughtOn', 'Bought', ['bought on', 'date bought', 'purchased'], (pack) => pack.boughtOn),
  column('firstUsedOn', 'First used', ['first used on', 'in use since'], (pack) => pack.firstUsedOn),
  column('chargesBefore', 'Charges before', ['cycles', 'charges'], (pack) => pack.chargesBefore),
  column('place', 'Place', ['where', 'shelf'], (pack) => pack.place),
  column('notes', 'Notes', ['note', 'remarks'], (pack) => pack.notes),
];

/** The columns of an export: those that can be read back, and what the register says besides. */
export const EXPORT_COLUMNS: readonly CsvColumn<Pack>[] = [
  ...PACK_COLUMNS,
  { head: 'State', cell: (pack) => stateWords(pack.state) },
  { head: 'State since', cell: (pack) => pack.stateSince.toISOString().slice(0, 10) },
  { head: 'Reason', cell: (pack) => pack.stateReason },
];

/** Heads that an export holds and an import leaves out on purpose: a state has a history, which a table cannot give. */
export const LEFT_OUT_HEADS = ['State', 'State since', 'Reason'];

function isCellType(id: string): id is CellTypeId {
  return (CELL_TYPES as readonly string[]).includes(id);
}
