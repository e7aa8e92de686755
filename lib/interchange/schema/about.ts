import { z } from 'zod';
import { between, byId, line, lines, list, oneOf, whole } from './leaves';

/** Parts of the document by which it describes itself. No number of the result rests on them. */

const area = z.strictObject({
  name: line(100).meta({ description: 'What the school calls the place.' }),
  use: oneOf(['charging', 'storage', 'arena', 'isolation', 'disposal', 'vehicle']).meta({ description: 'What happens there.' }),
  volumeM3: between(1, 100_000, 'm³').optional().meta({ description: 'Volume in cubic metres.' }),
  note: lines(500).optional().meta({ description: 'A remark on the place.' }),
}, { error: 'only "name", "use", "volumeM3" and "note"' });
const areasSchema = list(area, 0, 40, 'areas').meta({ description: 'The places this assessment covers.' });

const pack = z.strictObject({
  label: line(60).meta({ description: 'Label or serial number of the pack, or of the kind.' }),
  count: whole(1, 400).optional().meta({ description: 'How many of this kind; 1 when missing.' }),
  cells: whole(1, 8).meta({ description: 'Cells in series.' }),
  capacityMah: between(100, 5000, 'mAh').meta({ description: 'Capacity in milliampere-hours.' }),
  energyWh: between(1, 200, 'Wh').optional().meta({ description: 'Energy printed on the label in watt-hours, if any.' }),
}, { error: 'only "label", "count", "cells", "capacityMah" and "energyWh"' });
const packsSchema = list(pack, 0, 400, 'packs').meta({ description: 'The packs this assessment covers. The engine reads the answers, not this list.' });

const initials = 'initials, at most 8 characters, such as "K. M."';
const day = 'a date as year-month-day, such as "2026-11-25"';
export const aboutShape = {
  school: line(200).optional().meta({ description: 'Name of the school.' }),
  site: line(200).optional().meta({ description: 'Name of the site or building.' }),
  areas: areasSchema.optional(),
  packs: packsSchema.optional(),
  preparedBy: z.string({ error: initials }).regex(/^\p{L}[\p{L}. -]{0,7}$/u, { error: initials }).optional()
    .meta({ description: 'Initials of the person who prepared it. Never a full name: many of those near are minors.' }),
  preparedOn: z.iso.date({ error: day }).optional().meta({ description: 'Day on which it was prepared, year-month-day.' }),
  notes: byId(lines(2000), 'text by question id').optional().meta({ description: 'Remarks on answers, by question id.' }),
};
