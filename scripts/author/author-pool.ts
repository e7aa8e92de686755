import { EventEmitter } from 'node:events';
import pg from 'pg';

/** PostgreSQL's one-byte type `"char"`, in which its catalogue keeps codes. */
const CHAR_OID = 18;
const TEXT_OID = 25;

interface RowDescription {
  fields: { dataTypeID: number }[];
}

/**
 * Returns a pool that hands columns of type `"char"` over as text. The schema engine reads such columns of the
 * catalogue, and @prisma/adapter-pg 7.10.0 has no entry for their type.
 */
export function createAuthorPool(url: string): pg.Pool {
  const pool = new pg.Pool({ connectionString: url });
  pool.on('connect', (client) => {
    const connection: unknown = 'connection' in client ? client.connection : undefined;
    if (!(connection instanceof EventEmitter)) throw new Error('This version of pg keeps its connection elsewhere');
    connection.prependListener('rowDescription', (message: RowDescription) => {
      for (const field of message.fields) if (field.dataTypeID === CHAR_OID) field.dataTypeID = TEXT_OID;
    });
  });
  return pool;
}
