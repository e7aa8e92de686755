import { writeCsv } from '@/lib/csv/write-csv';
import { incidentColumns, IncidentQuerySchema } from '@/lib/incidents/incident-list';
import { requireMay } from '@/lib/server/actor';
import { csvResponse } from '@/lib/server/csv-response';
import { factNames, listOfIncidents } from '@/lib/server/incidents/read-incidents';

/** The incidents the person may read that the list shows, as a table. */
export async function GET(request: Request): Promise<Response> {
  const actor = await requireMay('incident.read');
  const query = IncidentQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { shown } = await listOfIncidents(actor, query);
  return csvResponse(writeCsv(incidentColumns(await factNames(actor)), shown), 'incidents');
}
