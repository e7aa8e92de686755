import path from 'node:path';

/** Where the thread that sets papers begins. @param root folder of the program */
export function threadEntry(root: string): string {
  return path.join(root, 'lib', 'pdf', 'worker', 'start.mjs');
}
