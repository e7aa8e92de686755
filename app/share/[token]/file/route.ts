import { openSharedFile } from '@/lib/server/events/shared-file';
import { pdfResponse } from '@/lib/server/papers/pdf-response';

/** The file of a link, as it was signed, while somebody is to read on in it. */
export async function GET(_request: Request, { params }: { readonly params: Promise<{ readonly token: string }> }): Promise<Response> {
  const opened = await openSharedFile((await params).token);
  return pdfResponse(opened.ok && opened.shared.standing.shown ? opened.file : null);
}
