import * as asn1js from 'asn1js';
import { createHash } from 'node:crypto';
import { checkSigner } from './check-signer';
import { derOf, integer, octets, octetsOf, oid, oidOf, partsOf, readDer, sequence } from './der';
import { SHA_256, TIMESTAMP_CONTENT } from './oids';
import { readSignedData } from './read-signed-data';

/** Sends a request of RFC 3161 to a service for time stamps and returns what it answers, both in DER. */
export type TimestampClient = (request: Uint8Array) => Promise<Uint8Array>;

/** What a time stamp says, once it was found to fit. Whether the service is to be believed is the reader's to judge. */
export interface Timestamp {
  readonly at: Date;
  /** DER */
  readonly certificate: Uint8Array;
}

/**
 * Asks a service to say when a signature was there (RFC 3161).
 * @param nonce 8 random bytes, so that an old answer cannot be played again
 * @returns the token in DER. Throws where the service refuses or answers to something else: then nothing is signed
 */
export async function requestTimestamp(signature: Uint8Array, client: TimestampClient, nonce: Uint8Array): Promise<Uint8Array> {
  const positive = Uint8Array.from(nonce);
  positive[0] = ((positive[0] ?? 0) & 0x3f) | 0x40;
  const imprint = sequence(sequence(oid(SHA_256), new asn1js.Null()), octets(sha256(signature)));
  const request = sequence(integer(1), imprint, new asn1js.Integer({ valueHex: positive }), new asn1js.Boolean({ value: true }));
  const [status, token] = partsOf(readDer(await client(derOf(request)))?.value);
  const [code] = partsOf(status);
  const granted = code instanceof asn1js.Integer && code.valueBlock.valueDec <= 1;
  if (!granted || token === undefined) throw new Error('the time stamp service refused');
  const der = derOf(token);
  const stamp = readTimestamp(der, signature);
  const answered = readToken(der)?.nonce;
  if (stamp === undefined || answered === undefined || !Buffer.from(answered).equals(positive)) throw new Error('the time stamp service answered to something else');
  return der;
}

/** Reads a token and holds it to the signature it stands beside; undefined where it does not fit or does not hold. */
export function readTimestamp(token: Uint8Array, signature: Uint8Array): Timestamp | undefined {
  const read = readToken(token);
  if (read === undefined || !sha256(signature).equals(read.imprint)) return undefined;
  const check = checkSigner(read.signed, read.content);
  return check.state === 'holds' ? { at: read.at, certificate: check.certificate } : undefined;
}

function readToken(token: Uint8Array) {
  const signed = readSignedData(token);
  const content = signed?.content.type === TIMESTAMP_CONTENT ? signed.content.bytes : undefined;
  if (signed === undefined || content === undefined) return undefined;
  const info = partsOf(readDer(content)?.value);
  const [algorithm, hashed] = partsOf(info[2]);
  const imprint = oidOf(partsOf(algorithm)[0]) === SHA_256 ? octetsOf(hashed) : undefined;
  const time = info.find((part) => part instanceof asn1js.GeneralizedTime);
  const nonce = info.slice(5).find((part) => part instanceof asn1js.Integer);
  if (imprint === undefined || time === undefined) return undefined;
  return { signed, content, imprint, at: time.toDate(), nonce: nonce === undefined ? undefined : new Uint8Array(nonce.valueBlock.valueHexView) };
}

function sha256(bytes: Uint8Array): Buffer {
  return createHash('sha256').update(bytes).digest();
}
