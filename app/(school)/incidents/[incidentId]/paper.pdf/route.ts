import type { NextRequest } from 'next/server';
import { requireMay } from '@/lib/server/actor';
import { incidentPaperFile } from '@/lib/server/incidents/incident-paper';
import { pdfResponse } from '@/lib/server/papers/pdf-response';

interface Context { readonly params: Promise<{ readonly incidentId: string }> }

/** The stored file of an incident's paper, byte by byte as it was signed. */
export async function GET(request: NextRequest, { params }: Context): Promise<Response> {
  const actor = await requireMay('document.read');
  const { incidentId } = await params;
  return pdfResponse(await incidentPaperFile(actor, incidentId, request.nextUrl.searchParams.get('number') ?? undefined));
}
