import type { NextRequest } from 'next/server';
import { AssessmentQuerySchema } from '@/lib/assessments/list';
import { requireMay } from '@/lib/server/actor';
import { assessmentsCsv } from '@/lib/server/assessments/list';

/** The list of assessments as a table for a spreadsheet, narrowed as the page was. */
export async function GET(request: NextRequest): Promise<Response> {
  const actor = await requireMay('assessment.read');
  const query = AssessmentQuerySchema.parse(Object.fromEntries(request.nextUrl.searchParams));
  return new Response(await assessmentsCsv(actor, query), { headers: { 'Content-Type': 'text/csv; charset=utf-8', 'Content-Disposition': 'attachment; filename="assessments.csv"', 'Cache-Control': 'no-store' } });
}
