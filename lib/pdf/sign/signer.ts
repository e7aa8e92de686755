import { createHash, createPrivateKey, randomBytes, sign } from 'node:crypto';
import { buildSignedData, signedAttributes } from '../cms/build-signed-data';
import { requestTimestamp, type TimestampClient } from '../cms/timestamp';

/** Whoever signs, for as long as it takes. */
export interface Signer {
  /** of the person, DER */
  readonly certificate: Uint8Array;
  /** of the school that issued it, DER */
  readonly issuer: Uint8Array;
  /** PKCS #8, in the clear */
  readonly key: Uint8Array;
  /** a service of the school's choice; without one the time is what the clock said */
  readonly timestamp?: TimestampClient;
}

/** Signs some bytes: a detached CMS signature, PAdES baseline B-B, or B-T with a time stamp. DER. */
export async function detachedSignature(content: readonly Uint8Array[], { certificate, issuer, key, timestamp }: Signer): Promise<Uint8Array> {
  const hash = createHash('sha256');
  for (const piece of content) hash.update(piece);
  const parts = { certificate, issuer, digest: hash.digest() };
  const privateKey = createPrivateKey({ key: Buffer.from(key), format: 'der', type: 'pkcs8' });
  const signature = sign('sha256', signedAttributes(parts), { key: privateKey, dsaEncoding: 'der' });
  const token = timestamp === undefined ? undefined : await requestTimestamp(signature, timestamp, randomBytes(8));
  return buildSignedData(parts, signature, token);
}
