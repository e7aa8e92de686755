import type { NextRequest } from 'next/server';
import { requireMay } from '@/lib/server/actor';
import { paperFile } from '@/lib/server/signing/paper-view';

interface Context { readonly params: Promise<{ readonly versionId: string }> }

/** The stored file of a paper, byte by byte as it was signed. */
export async function GET(request: NextRequest, { params }: Context): Promise<Response> {
  const actor = await requireMay('document.read');
  const { versionId } = await params;
  const file = await paperFile(actor, versionId, request.nextUrl.searchParams.get('number') ?? undefined);
  if (file === null) return new Response('There is no such paper.', { status: 404, headers: { 'Content-Type': 'text/plain; charset=utf-8' } });
  return new Response(Buffer.from(file.bytes), {
    headers: {
      'Content-Type': 'application/pdf',
      'Content-Length': String(file.bytes.length),
      'Content-Disposition': `inline; filename="${file.number}.pdf"`,
      'Cache-Control': 'private, no-store',
      ETag: `"${file.sha256}"`,
    },
  });
}
