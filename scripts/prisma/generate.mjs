import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { composeSchema, ENGINES } from './compose-schema.mjs';

/** @typedef {import('./compose-schema.mjs').Engine} Engine */

/**
 * @typedef {object} GenerateJob
 * @property {Engine} engine
 * @property {boolean} current true when the client on disk was generated from this very schema
 * @property {string[]} command arguments for Node
 * @property {Record<string, string>} env to add to the environment of the command
 * @property {() => void} markCurrent call after the command ended well
 */

/**
 * Lists what has to be run to have both Prisma clients, one job per database engine.
 * @param {string} root project folder
 * @returns {GenerateJob[]}
 */
export function generateJobs(root) {
  const cli = path.join(root, 'node_modules', 'prisma', 'build', 'index.js');
  const prismaVersion = JSON.parse(readFileSync(path.join(root, 'node_modules', 'prisma', 'package.json'), 'utf8')).version;
  return ENGINES.map((engine) => {
    const { file, text } = composeSchema(root, engine);
    const fingerprint = createHash('sha256').update(`${prismaVersion}\n${text}`).digest('hex');
    const folder = path.join(root, 'lib', 'db', 'generated', engine);
    const stamp = path.join(folder, '.fingerprint');
    return {
      engine,
      current: existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprint,
      command: [cli, 'generate', '--schema', path.relative(root, file)],
      env: {
        PRISMA_SCHEMA_ENGINE_BINARY: path.join(root, 'scripts', 'prisma', 'schema-engine-stub.txt'),
        PRISMA_HIDE_UPDATE_MESSAGE: '1',
        CHECKPOINT_DISABLE: '1',
      },
      markCurrent: () => writeFileSync(stamp, fingerprint),
    };
  });
}
