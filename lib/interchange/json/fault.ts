import { type Path, jsonPath } from './json-path';

/** One thing wrong with a document, where, and what would be right. */
export interface DocumentFault {
  /** JSONPath, for example `$.answers["room-size"].chargingVolume` */
  readonly path: string;
  readonly problem: string;
  readonly expected: string;
}

export function faultAt(path: Path, problem: string, expected: string): DocumentFault {
  return { path: jsonPath(path), problem, expected };
}

/** @returns a fault on one line, the same on the page and from the command */
export function faultInWords({ path, problem, expected }: DocumentFault): string {
  return `${path}: ${problem}; right would be: ${expected}`;
}
