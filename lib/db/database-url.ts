import path from 'node:path';

export type DatabaseEngine = 'sqlite' | 'postgresql';

/** Returns the engine an address belongs to, or undefined when it is neither `file:` nor `postgresql://`. */
export function engineOfUrl(url: string): DatabaseEngine | undefined {
  if (/^postgres(ql)?:\/\//.test(url)) return 'postgresql';
  if (url.startsWith('file:') && url.length > 'file:'.length) return 'sqlite';
  return undefined;
}

/** Returns the absolute path of the SQLite file named by a `file:` address; a relative one counts from `root`. */
export function sqliteFileOfUrl(url: string, root: string): string {
  return path.resolve(root, url.replace(/^file:/, ''));
}
