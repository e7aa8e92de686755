import { requireMay } from '@/lib/server/actor';
import { readPhoto } from '@/lib/server/incidents/read-incidents';

interface PhotoRoute { readonly params: Promise<{ readonly incidentId: string; readonly photoId: string }> }

/** A photo of an incident, for those who may read the incident. Nothing on the way keeps a copy. */
export async function GET(_: Request, { params }: PhotoRoute): Promise<Response> {
  const actor = await requireMay('incident.read');
  const { incidentId, photoId } = await params;
  const photo = await readPhoto(actor, incidentId, photoId);
  if (photo === null) return new Response('Not found', { status: 404 });
  return new Response(photo.bytes, { headers: { 'content-type': photo.mimeType, 'content-disposition': 'inline', 'cache-control': 'no-store' } });
}
