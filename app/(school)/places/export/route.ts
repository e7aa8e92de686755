import { writeCsv } from '@/lib/csv/write-csv';
import { PLACE_COLUMNS, placeLines } from '@/lib/places/csv-columns';
import { requireMay } from '@/lib/server/actor';
import { csvResponse } from '@/lib/server/csv-response';
import { listOfSites } from '@/lib/server/places/read-places';

/** The places with their areas as a table. */
export async function GET(): Promise<Response> {
  const actor = await requireMay('place.read');
  return csvResponse(writeCsv(PLACE_COLUMNS, placeLines(await listOfSites(actor, ''))), 'places');
}
