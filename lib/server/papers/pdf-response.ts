import 'server-only';
import type { StoredFile } from '@/lib/db/documents/read-document';

/** A stored paper as the answer of a route, byte by byte as it was signed; null is answered as not there. Whoever asks was let through by the caller. */
export function pdfResponse(file: StoredFile | null): Response {
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
