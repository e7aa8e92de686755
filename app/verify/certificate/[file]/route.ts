import { certificateFile } from '@/lib/server/papers/certificates';

interface Context { readonly params: Promise<{ readonly file: string }> }

/** A school's certificate, for whoever checks its papers with another program. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const found = await certificateFile((await params).file);
  if (found === null) return new Response('There is no such certificate.', { status: 404, headers: { 'Content-Type': 'text/plain; charset=utf-8' } });
  return new Response(Buffer.from(found.bytes), { headers: { 'Content-Type': found.type, 'Content-Disposition': `attachment; filename="${found.name}"`, 'Cache-Control': 'public, max-age=86400' } });
}
