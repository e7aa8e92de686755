import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { sentencesOf } from './sentences';
import { passagesOfJson } from './texts-of-json';
import { textsOfMarkdown, textsOfMarkup } from './texts-of-markup';
import { textsOfTypeScript } from './texts-of-typescript';

/** What a user may see in one piece, sentence by sentence. */
export interface Passage { readonly file: string; readonly sentences: readonly string[] }

const FOLDERS = ['app', 'lib', 'public', 'docs', 'scripts', 'prisma'];
/** Made by a machine; or written for those who develop, who must be able to quote what was wrong. */
const LEFT_OUT = ['lib/db/generated/', 'docs/decisions/', 'docs/review-taken/', 'DEVELOPERS.md'];

/** Every passage of the project that a user may see, in the order of the files. */
export function projectPassages(root: string): readonly Passage[] {
  const pages = readdirSync(root).filter((name) => name.endsWith('.md'));
  const files = [...FOLDERS.flatMap((folder) => filesBelow(root, folder)), ...pages].filter((file) => !LEFT_OUT.some((part) => file.startsWith(part)));
  return files.sort().flatMap((file) => passagesOf(file, () => readFileSync(path.join(root, file), 'utf8')).map((texts) => ({ file, sentences: texts.flatMap(sentencesOf) })));
}

function filesBelow(root: string, folder: string): readonly string[] {
  return readdirSync(path.join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'));
}

function passagesOf(file: string, read: () => string): readonly (readonly string[])[] {
  const each = (texts: readonly string[]) => texts.map((text) => [text]);
  switch (path.extname(file)) {
    case '.tsx': return [textsOfTypeScript(file, read())];
    case '.ts': case '.mjs': case '.js': return each(textsOfTypeScript(file, read()));
    case '.json': case '.webmanifest': return passagesOfJson(JSON.parse(read()));
    case '.html': case '.svg': return each(textsOfMarkup(read()));
    case '.md': case '.txt': return each(textsOfMarkdown(read()));
    default: return [];
  }
}
