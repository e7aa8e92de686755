import { writeCsv } from '@/lib/csv/write-csv';
import { EXPORT_COLUMNS } from '@/lib/packs/csv-columns';
import { requireMay } from '@/lib/server/actor';
import { csvResponse } from '@/lib/server/csv-response';
import { listOfPacks } from '@/lib/server/packs/read-packs';

/** The whole register as a table that can be read back. */
export async function GET(): Promise<Response> {
  const actor = await requireMay('pack.read');
  const { shown } = await listOfPacks(actor, { find: '', state: 'all' }, new Date());
  return csvResponse(writeCsv(EXPORT_COLUMNS, shown.map(({ pack }) => pack)), 'packs');
}
