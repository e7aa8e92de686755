import { endToEndTests } from './end-to-end-tests.mjs';
import { oneSkipped } from './tally.mjs';

/** What a database has a part in; the first run comes before every one of them. */
const FILES = ['people', 'places-packs', 'signing', 'incidents', 'whole-path'];
/** Tag of what says nothing about the database when it is done a second time. */
const SAME_ON_BOTH = '@same-on-both';

/**
 * Runs a part of the end-to-end tests on a PostgreSQL server that is started for it and thrown away.
 * @type {import('./steps.mjs').Step['run']}
 */
export async function endToEndOnPostgresql(place) {
  const { findPostgresql, startTemporaryPostgresql } = await temporaryPostgresql();
  const programs = findPostgresql();
  if (!programs) return oneSkipped('PostgreSQL is not installed here (apt-get install postgresql).');
  const server = await startTemporaryPostgresql(programs);
  // Also when everything is stopped and this function never goes on.
  const stop = () => void server.stop();
  process.once('exit', stop);
  try {
    const words = [...FILES.map((name) => `tests/e2e/${name}.spec.ts`), '--grep-invert', SAME_ON_BOTH, '--output', 'test-results/on-postgresql'];
    return await endToEndTests(place, { words, env: { E2E_DATABASE_URL: server.url, E2E_SEEN_ALREADY: 'yes' } });
  } finally {
    process.removeListener('exit', stop);
    await server.stop();
  }
}

/**
 * It is TypeScript, which only tsx reads; and tsx is not there before the packages are.
 * @returns {Promise<typeof import('../author/temporary-postgresql')>}
 */
async function temporaryPostgresql() {
  const { tsImport } = await import('tsx/esm/api');
  return tsImport('../author/temporary-postgresql.ts', import.meta.url);
}
