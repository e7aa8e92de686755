import type { NextRequest } from 'next/server';
import { requireMay } from '@/lib/server/actor';
import { pdfResponse } from '@/lib/server/papers/pdf-response';
import { paperFile } from '@/lib/server/signing/paper-view';

interface Context { readonly params: Promise<{ readonly versionId: string }> }

/** The stored file of a paper, byte by byte as it was signed. */
export async function GET(request: NextRequest, { params }: Context): Promise<Response> {
  const actor = await requireMay('document.read');
  const { versionId } = await params;
  return pdfResponse(await paperFile(actor, versionId, request.nextUrl.searchParams.get('number') ?? undefined));
}
