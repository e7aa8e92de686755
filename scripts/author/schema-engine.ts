// Prisma's schema engine compiled to WebAssembly. Internal to Prisma and undocumented, hence pinned and for authors only.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { bindMigrationAwareSqlAdapterFactory, type SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import * as glue from '@prisma/schema-engine-wasm/schema_engine_bg';

declare global {
  /** Where the engine leaves its last words when it panics. */
  var PRISMA_WASM_PANIC_REGISTRY: { set_message: (message: string) => void } | undefined;
}

/** The glue keeps its memory in module variables, so a second instance would write into the first one's. */
let loaded: Promise<void> | undefined;

async function loadWasm(): Promise<void> {
  const entry = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  globalThis.PRISMA_WASM_PANIC_REGISTRY = { set_message: (message) => console.error(message) };
  const bytes = readFileSync(path.join(path.dirname(entry), 'schema_engine_bg.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': { ...glue } });
  glue.__wbg_set_wasm(instance.exports);
  const begin = instance.exports.__wbindgen_start;
  if (typeof begin !== 'function') throw new Error('The schema engine has no start function; its version does not fit');
  Reflect.apply(begin, undefined, []);
}

/**
 * Returns the SQL that leads from the tables of a database to those of a composed schema; an empty string when they
 * are the same.
 */
export async function sqlTowardsSchema(
  adapter: SqlMigrationAwareDriverAdapterFactory,
  schema: { file: string; text: string },
): Promise<string> {
  loaded ??= loadWasm();
  await loaded;
  const bound = bindMigrationAwareSqlAdapterFactory(adapter);
  const engine = await glue.SchemaEngine.new({ datamodels: [[schema.file, schema.text]] }, () => undefined, bound);
  const files = [{ path: schema.file, content: schema.text }];
  const diff = await engine.diff({
    from: { tag: 'schemaDatasource', files, configDir: path.dirname(schema.file) },
    to: { tag: 'schemaDatamodel', files },
    script: true,
    exitCode: true,
    filters: { externalTables: [], externalEnums: [] },
  });
  engine.free();
  return diff.exitCode === 0 ? '' : (diff.stdout ?? '');
}
