import 'server-only';
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

export interface ZipEntry {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** pictures and PDFs are packed already */
  readonly packed?: boolean;
}

/** Returns a ZIP archive as a stream that makes an entry only when somebody takes what was made before. */
export function zipStream(entries: AsyncIterator<ZipEntry>): ReadableStream<Uint8Array> {
  const archive = new Archive();
  return new ReadableStream<Uint8Array>({
    async pull(controller) {
      const next = await entries.next();
      if (next.done === true) archive.end();
      else archive.add(next.value);
      for (const chunk of archive.take()) controller.enqueue(chunk);
      if (next.done === true) controller.close();
    },
    async cancel() {
      await entries.return?.();
    },
  });
}

/** What is written of an archive and not taken yet. */
class Archive {
  #chunks: Uint8Array[] = [];
  #zip = new Zip((error, chunk) => {
    // The library hands an error over instead of throwing it.
    if (error) throw error;
    this.#chunks.push(chunk);
  });

  add({ name, bytes, packed = false }: ZipEntry): void {
    const file = packed ? new ZipPassThrough(name) : new ZipDeflate(name);
    this.#zip.add(file);
    file.push(bytes, true);
  }

  end(): void {
    this.#zip.end();
  }

  take(): readonly Uint8Array[] {
    return this.#chunks.splice(0);
  }
}
