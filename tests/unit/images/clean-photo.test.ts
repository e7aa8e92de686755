import { createHash } from 'node:crypto';
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { cleanPhoto, LARGEST_PHOTO_BYTES } from '@/lib/images/clean-photo';

const drawing = (width: number, height: number) => sharp({ create: { width, height, channels: 3, background: '#a82a06' } });
const GPS = { IFD0: { Make: 'Tern Camera', Software: 'secret-software' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 3366/100' } };

async function cleaned(bytes: Uint8Array) {
  const result = await cleanPhoto(bytes);
  if (!result.ok) throw new Error(result.reason);
  return result.photo;
}

describe('a photo', () => {
  it('loses where and with what it was taken', async () => {
    const sent = await drawing(60, 40).withExif(GPS).withIccProfile('p3').jpeg().toBuffer();
    const before = await sharp(sent).metadata();
    expect(before.exif?.includes('Tern Camera')).toBe(true);
    // Tag 0x8825 of the first directory leads to the one with the position (EXIF 2.3, table 4: from memory).
    expect(before.exif?.includes(Buffer.from([0x88, 0x25]))|| before.exif?.includes(Buffer.from([0x25, 0x88]))).toBe(true);
    const photo = await cleaned(sent);
    const after = await sharp(photo.bytes).metadata();
    expect([after.exif, after.icc, after.xmp, after.iptc, after.comments]).toEqual([undefined, undefined, undefined, undefined, undefined]);
    for (const trace of ['Exif', 'GPS', 'Tern Camera', 'secret-software']) expect(Buffer.from(photo.bytes).includes(trace)).toBe(false);
  });

  it('stands upright, although the note that says how was taken out', async () => {
    const photo = await cleaned(await drawing(60, 40).withMetadata({ orientation: 6 }).jpeg().toBuffer());
    expect([photo.widthPx, photo.heightPx]).toEqual([40, 60]);
  });

  it('is made no larger than it was, and no larger than it need be', async () => {
    expect(await cleaned(await drawing(60, 40).png().toBuffer())).toMatchObject({ widthPx: 60, heightPx: 40, mimeType: 'image/jpeg' });
    expect(await cleaned(await drawing(5000, 2500).webp().toBuffer())).toMatchObject({ widthPx: 2000, heightPx: 1000 });
  });

  it('is known by the hash of what is kept', async () => {
    const photo = await cleaned(await drawing(60, 40).jpeg().toBuffer());
    expect(photo.sha256).toBe(createHash('sha256').update(photo.bytes).digest('hex'));
  });

  it.each<[string, Uint8Array]>([
    ['a text', Buffer.from('not a picture at all')],
    ['nothing', new Uint8Array()],
    ['a drawing that is a program', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><image href="file:///etc/passwd"/></svg>')],
    ['a film in a picture’s clothes', Buffer.from('GIF89a\x01\x00\x01\x00\x00\x00\x00;', 'latin1')],
    ['more than a camera sends', Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(LARGEST_PHOTO_BYTES)])],
    ['the beginning of a JPEG', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46])],
  ])('is not %s', async (_, bytes) => { expect((await cleanPhoto(bytes)).ok).toBe(false); });

  it('is not half a photo', async () => {
    const whole = await sharp(Buffer.from(Array.from({ length: 300 * 300 * 3 }, (_, index) => (index * 7919) % 251)), { raw: { width: 300, height: 300, channels: 3 } }).jpeg().toBuffer();
    expect((await cleanPhoto(whole.subarray(0, whole.length / 2))).ok).toBe(false);
  });

  it('is not a small file that unpacks to fill the memory', async () => { expect(await cleanPhoto(pngThatClaims(30_000, 30_000))).toMatchObject({ ok: false, reason: expect.stringContaining('pixel') as string }); });
});

/** A PNG whose header claims a size; the rest of it is short. */
function pngThatClaims(width: number, height: number): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), chunk('IHDR', head), chunk('IDAT', deflateSync(Buffer.alloc(1000))), chunk('IEND', Buffer.alloc(0))]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** CRC-32 as PNG wants it (ISO 3309, polynomial 0xEDB88320: from memory). */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
