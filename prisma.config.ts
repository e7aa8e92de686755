import { defineConfig } from 'prisma/config';

// Only for Prisma's own commands (generate, studio). The program reads its settings in lib/server/env.ts.
const url = process.env.DATABASE_URL ?? 'file:./data/sandbucket.db';
const engine = /^postgres(ql)?:/.test(url) ? 'postgresql' : 'sqlite';

export default defineConfig({
  schema: `prisma/composed/${engine}/schema.prisma`,
  migrations: { path: `prisma/${engine}/migrations` },
  datasource: { url },
});
