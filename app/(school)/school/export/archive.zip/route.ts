import { requireMay } from '@/lib/server/actor';
import { noteExport, schoolArchive } from '@/lib/server/export/school-archive';
import { zipStream } from '@/lib/server/export/zip-stream';

/** All data of the school as one file. It is made while it is sent; nothing on the way keeps a copy. */
export async function GET(): Promise<Response> {
  const actor = await requireMay('school.export');
  const at = new Date();
  await noteExport(actor, at);
  const name = `school-${at.toISOString().slice(0, 10)}.zip`;
  return new Response(zipStream(schoolArchive(actor, at)), { headers: { 'content-type': 'application/zip', 'content-disposition': `attachment; filename="${name}"`, 'cache-control': 'no-store' } });
}
