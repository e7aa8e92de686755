import { requireMay } from '@/lib/server/actor';
import { isEventPaperKind } from '@/lib/server/events/paper-kinds';
import { eventPaperFile } from '@/lib/server/events/read-papers';
import { pdfResponse } from '@/lib/server/papers/pdf-response';

interface Context { readonly params: Promise<{ readonly eventId: string; readonly kind: string }> }

/** The stored file of an event's paper: the latest of its kind, or the one of a number. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const actor = await requireMay('document.read');
  const { eventId, kind } = await params;
  const number = new URL(request.url).searchParams.get('number');
  return pdfResponse(isEventPaperKind(kind) ? await eventPaperFile(actor, eventId, kind, number ?? undefined) : null);
}
