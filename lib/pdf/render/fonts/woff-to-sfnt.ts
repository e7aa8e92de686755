import { inflateSync } from 'node:zlib';

const HEADER = 44;
const ENTRY = 20;

export function isWoff(font: Buffer): boolean {
  return font.toString('latin1', 0, 4) === 'wOFF';
}

/**
 * A font of the form WOFF 1.0 (W3C, 2012, sections 3 to 5) as the plain font inside it. The PDF writer reads WOFF
 * too, but unpacks a whole table again for each glyph: seconds for a large font, where this takes milliseconds.
 */
export function woffToSfnt(woff: Buffer): Buffer {
  if (!isWoff(woff)) throw new Error('not a WOFF font');
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, index) => readTable(woff, HEADER + index * ENTRY));
  const directory = Buffer.alloc(12 + count * 16);
  const power = 2 ** Math.floor(Math.log2(count));
  directory.writeUInt32BE(woff.readUInt32BE(4), 0);
  directory.writeUInt16BE(count, 4);
  directory.writeUInt16BE(power * 16, 6);
  directory.writeUInt16BE(Math.log2(power), 8);
  directory.writeUInt16BE((count - power) * 16, 10);
  let offset = directory.length;
  tables.forEach(({ tag, checksum, data }, index) => {
    const at = 12 + index * 16;
    directory.write(tag, at, 'latin1');
    directory.writeUInt32BE(checksum, at + 4);
    directory.writeUInt32BE(offset, at + 8);
    directory.writeUInt32BE(data.length, at + 12);
    offset += data.length + padding(data.length);
  });
  return Buffer.concat([directory, ...tables.flatMap(({ data }) => [data, Buffer.alloc(padding(data.length))])]);
}

/** Tables begin at multiples of four. */
const padding = (length: number): number => (4 - (length % 4)) % 4;

function readTable(woff: Buffer, at: number): { readonly tag: string; readonly checksum: number; readonly data: Buffer } {
  const offset = woff.readUInt32BE(at + 4);
  const packed = woff.readUInt32BE(at + 8);
  const length = woff.readUInt32BE(at + 12);
  const stored = woff.subarray(offset, offset + packed);
  const data = packed < length ? inflateSync(stored) : stored;
  if (data.length !== length) throw new Error('a table of a WOFF font has another length than it says');
  return { tag: woff.toString('latin1', at, at + 4), checksum: woff.readUInt32BE(at + 16), data };
}
