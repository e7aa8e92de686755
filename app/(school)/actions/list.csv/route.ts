import type { NextRequest } from 'next/server';
import { ActionQuerySchema } from '@/lib/assessments/action-input';
import { requireMay } from '@/lib/server/actor';
import { actionsCsv } from '@/lib/server/actions/read-actions';
import { csvResponse } from '@/lib/server/csv-response';

/** The list of actions as a table for a spreadsheet, narrowed as the page was. */
export async function GET(request: NextRequest): Promise<Response> {
  const actor = await requireMay('action.read');
  const query = ActionQuerySchema.parse(Object.fromEntries(request.nextUrl.searchParams));
  return csvResponse(await actionsCsv(actor, query), 'actions');
}
