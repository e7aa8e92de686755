import { requireMay } from '@/lib/server/actor';
import { csvResponse } from '@/lib/server/csv-response';
import { sessionsCsv } from '@/lib/server/sessions/read-sessions';
import { SessionQuerySchema } from '@/lib/sessions/session-list';

export async function GET(request: Request): Promise<Response> {
  const actor = await requireMay('session.read');
  const query = SessionQuerySchema.parse(Object.fromEntries(new URL(request.url).searchParams));
  return csvResponse(await sessionsCsv(actor, query), 'sessions');
}
