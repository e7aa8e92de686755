import { readHealth } from '@/lib/server/health';

export const dynamic = 'force-dynamic';

/** GET /api/health: 200 when the program can do its work, else 503; the body says which part is at fault. */
export async function GET(): Promise<Response> {
  const health = await readHealth();
  return Response.json(health, { status: health.status === 'ok' ? 200 : 503, headers: { 'Cache-Control': 'no-store' } });
}
