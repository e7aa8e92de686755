import { notFound } from 'next/navigation';
import { requireMay } from '@/lib/server/actor';
import { exportAssessment } from '@/lib/server/assessments/export';

/** The document of a version, in the form `sandbucket-assessment.v1`. */
export async function GET(_request: Request, { params }: { readonly params: Promise<{ readonly versionId: string }> }): Promise<Response> {
  const actor = await requireMay('assessment.read');
  const exported = await exportAssessment(actor, (await params).versionId);
  if (exported === null) notFound();
  return new Response(exported.text, { headers: { 'Content-Type': 'application/json; charset=utf-8', 'Content-Disposition': `attachment; filename="${exported.fileName}"`, 'Cache-Control': 'no-store' } });
}
