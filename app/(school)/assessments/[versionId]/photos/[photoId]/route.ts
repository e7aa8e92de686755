import { requireMay } from '@/lib/server/actor';
import { evidenceOf } from '@/lib/server/assessments/page-photos';

interface PhotoRoute { readonly params: Promise<{ readonly versionId: string; readonly photoId: string }> }

/** A photo beside an answer. Nothing on the way keeps a copy. */
export async function GET(_: Request, { params }: PhotoRoute): Promise<Response> {
  const actor = await requireMay('assessment.read');
  const { versionId, photoId } = await params;
  const photo = await evidenceOf(actor, versionId, photoId);
  if (photo === null) return new Response('Not found', { status: 404 });
  return new Response(photo.bytes, { headers: { 'content-type': photo.mimeType, 'content-disposition': 'inline', 'cache-control': 'no-store' } });
}
