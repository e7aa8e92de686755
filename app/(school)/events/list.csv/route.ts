import { writeCsv } from '@/lib/csv/write-csv';
import { EVENT_COLUMNS, EventQuerySchema } from '@/lib/events/event-list';
import { requireMay } from '@/lib/server/actor';
import { csvResponse } from '@/lib/server/csv-response';
import { listOfEvents } from '@/lib/server/events/read-events';

/** The events that the list shows, as a table. */
export async function GET(request: Request): Promise<Response> {
  const actor = await requireMay('event.read');
  const query = EventQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  const { shown } = await listOfEvents(actor, query, new Date());
  return csvResponse(writeCsv(EVENT_COLUMNS, shown), 'events');
}
