import { createHash } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Paper } from '@/lib/papers/paper';

/** A paper as it is kept beside its file: the same data gives the file and the page on screen. */
export function packPaper(paper: Paper): Uint8Array { return new Uint8Array(gzipSync(JSON.stringify(paper))); }

/** What `packPaper` wrote, which nobody else can write. */
export function unpackPaper(data: Uint8Array): Paper { return JSON.parse(gunzipSync(data).toString('utf8')) as Paper; }

/** Of everything that stands on a paper: what somebody has read and what they sign are the same when these are. */
export function fingerprintOfPaper(paper: Paper): string {
  return createHash('sha256').update(JSON.stringify(paper), 'utf8').digest('hex');
}
