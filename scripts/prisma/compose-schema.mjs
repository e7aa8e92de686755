import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/** @typedef {'sqlite' | 'postgresql'} Engine */

/** @type {readonly Engine[]} */
export const ENGINES = ['sqlite', 'postgresql'];

/**
 * Writes `prisma/composed/<engine>/schema.prisma`: the engine's header followed by every shared model.
 * One composed file instead of a symbolic link, because Git on Windows checks links out as plain text.
 * @param {string} root project folder
 * @param {Engine} engine
 * @returns {{ file: string, text: string }} absolute path and content of the composed schema
 */
export function composeSchema(root, engine) {
  const header = path.join(root, 'prisma', engine, 'schema.prisma');
  const models = path.join(root, 'prisma', 'models');
  const names = readdirSync(models).filter((name) => name.endsWith('.prisma')).sort();
  const parts = [header, ...names.map((name) => path.join(models, name))];
  const text = parts.map((file) => readFileSync(file, 'utf8').trimEnd()).join('\n\n') + '\n';
  const file = path.join(root, 'prisma', 'composed', engine, 'schema.prisma');
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, text);
  return { file, text };
}
