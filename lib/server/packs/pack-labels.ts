import 'server-only';
import { cellTypeFacts } from '@/lib/packs/cell-types';
import { cellsInWords, type Pack } from '@/lib/packs/pack';
import { packFigures } from '@/lib/packs/pack-figures';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';
import type { Actor } from '../actor';
import { publicAddress } from '../people/public-address';
import { type QrPath, qrPath } from '../qr-path';
import { packLimitsOf } from './pack-limits';
import { listOfPacks } from './read-packs';

/** What stands on the label of one pack. */
export interface PackLabel {
  readonly id: string;
  readonly label: string;
  readonly lines: readonly string[];
  readonly qr: QrPath;
}

/** Returns the labels of all packs that are here, or of one of them. @param only id of a pack, null for all */
export async function packLabels(actor: Actor, only: string | null): Promise<readonly PackLabel[]> {
  const [{ shown }, limits] = await Promise.all([listOfPacks(actor, { find: '', state: null }, new Date()), packLimitsOf(actor)]);
  const packs = shown.map(({ pack }) => pack).filter(({ id }) => only === null || id === only);
  return Promise.all(packs.map(async (pack) => ({ id: pack.id, label: pack.label, lines: linesOf(pack, limits), qr: qrPath(await publicAddress(`/packs/${pack.id}`)) })));
}

/** What somebody at the charger has to know without a telephone. */
function linesOf(pack: Pack, limits: SchoolPackLimits): readonly string[] {
  const cell = cellTypeFacts(limits).find(({ id }) => id === pack.cellType);
  const kind = `${cellsInWords(pack)} ${pack.capacityMah} mAh`;
  if (cell?.fullV === null || cell === undefined) return [kind, 'Do not charge'];
  const { energyWh, chargeAt1C } = packFigures(pack, cell);
  const full = pack.cellType === 'not-marked' ? 'full voltage not known: do not charge' : `full ${cell.fullV.toFixed(2)} V a cell`;
  return [kind, full, ...(energyWh === null ? [] : [`${energyWh.toFixed(1)} Wh`]), `charge at ${chargeAt1C.toFixed(2)} A or less`, 'Smoke: leave, call from outside'];
}
