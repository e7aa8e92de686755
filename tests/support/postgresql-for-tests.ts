import pg from 'pg';

/** Makes a database on a server, empty or as a copy of another one, and returns its address. */
export async function newPostgresqlDatabase(serverUrl: string, name: string, template = 'template1'): Promise<string> {
  await queryPostgresql(serverUrl, `CREATE DATABASE "${name}" TEMPLATE "${template}"`);
  return serverUrl.replace(/\/postgres$/, `/${name}`);
}

/** Runs one statement and returns its rows. */
export async function queryPostgresql(url: string, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const result = await client.query<Record<string, unknown>>(sql);
    return result.rows;
  } finally {
    await client.end();
  }
}
