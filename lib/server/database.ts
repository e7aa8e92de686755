import 'server-only';
import { openDatabase, type Db } from '@/lib/db/client';
import { env } from './env';

const holder = globalThis as typeof globalThis & { sandbucketDatabase?: Db };

/** Returns the one database client of this process. Kept on globalThis, since `next dev` loads modules again and again. */
export function database(): Db {
  holder.sandbucketDatabase ??= openDatabase(env.databaseUrl);
  return holder.sandbucketDatabase;
}
