import { requireMay } from '@/lib/server/actor';
import { readPackPhoto } from '@/lib/server/packs/pack-photos';

interface PhotoRoute { readonly params: Promise<{ readonly packId: string; readonly photoId: string }> }

/** The photo of a pack, for the people of its school. Nothing on the way keeps a copy. */
export async function GET(_: Request, { params }: PhotoRoute): Promise<Response> {
  const actor = await requireMay('pack.read');
  const { packId, photoId } = await params;
  const photo = await readPackPhoto(actor, packId, photoId);
  if (photo === null) return new Response('Not found', { status: 404 });
  return new Response(photo.bytes, { headers: { 'content-type': photo.mimeType, 'content-disposition': 'inline', 'cache-control': 'no-store' } });
}
