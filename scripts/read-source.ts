import { createReadStream } from 'node:fs';

export type SourceRead = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

/** Four times what the reader accepts in characters: enough for any spelling of them in UTF-8. */
const MOST_BYTES = 2_000_000;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder, not a file',
  EACCES: 'this user may not read it',
};

/**
 * Reads a whole document.
 * @param source path of a file, or - for standard input
 * @returns its text, or why it cannot be read
 */
export async function readSource(source: string): Promise<SourceRead> {
  const name = source === '-' ? 'Standard input' : JSON.stringify(source);
  try {
    const bytes = await collect(source === '-' ? process.stdin : createReadStream(source));
    if (bytes === undefined) return { ok: false, reason: `${name} is longer than any assessment: over ${MOST_BYTES / 1e6} megabytes.` };
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch (error) {
    const reason = reasonFor(error);
    if (reason === undefined) throw error;
    return { ok: false, reason: `${name} cannot be read: ${reason}.` };
  }
}

async function collect(stream: AsyncIterable<unknown>): Promise<Uint8Array | undefined> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(String(chunk));
    length += bytes.length;
    if (length > MOST_BYTES) return undefined;
    chunks.push(bytes);
  }
  return Buffer.concat(chunks);
}

/** Words for what may go wrong outside of us; anything else is a fault of ours and must not be hidden. */
function reasonFor(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const code = 'code' in error ? String(error.code) : '';
  if (code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return 'it is not text in UTF-8';
  return REASONS[code];
}
