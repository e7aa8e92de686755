import type { AsnType } from 'asn1js';
import { derOf, isTagged, octetsOf, oidOf, partsOf, readDer } from './der';
import { SIGNED_DATA } from './oids';

/** A CMS signature taken apart, without a word on whether it holds. */
export interface SignedData {
  /** DER, in the order they stand in */
  readonly certificates: readonly Uint8Array[];
  /** what is signed, where it is inside */
  readonly content: { readonly type: string; readonly bytes: Uint8Array | undefined };
  readonly signer: SignerInfo;
}

export interface SignerInfo {
  /** issuer and serial of the signer's certificate, DER; undefined where it is named in another way */
  readonly issuerAndSerial: Uint8Array | undefined;
  readonly digestAlgorithm: string;
  /** attributes that are signed, DER as SET OF */
  readonly signedAttributes: Uint8Array;
  readonly signature: Uint8Array;
  /** the first value of an attribute, signed or not, DER */
  signedValue(oid: string): AsnType | undefined;
  unsignedValue(oid: string): AsnType | undefined;
}

/** Takes a signature apart; undefined where it is not one with exactly one signer and signed attributes. */
export function readSignedData(der: Uint8Array): SignedData | undefined {
  const [type, wrapped] = partsOf(readDer(der)?.value);
  const parts = partsOf(partsOf(wrapped)[0]);
  const [, , encapsulated] = parts;
  const signers = partsOf(parts.at(-1));
  const signer = readSigner(partsOf(signers[0]));
  const [contentType, content] = partsOf(encapsulated);
  const contentName = oidOf(contentType);
  if (oidOf(type) !== SIGNED_DATA || signers.length !== 1 || signer === undefined || contentName === undefined) return undefined;
  return {
    certificates: partsOf(parts.find((part) => isTagged(part, 0))).map(derOf),
    content: { type: contentName, bytes: octetsOf(partsOf(content)[0]) },
    signer,
  };
}

function readSigner([, sid, digestAlgorithm, attributes, , signature, unsigned]: readonly AsnType[]): SignerInfo | undefined {
  const digestName = oidOf(partsOf(digestAlgorithm)[0]);
  const signed = octetsOf(signature);
  if (!isTagged(attributes, 0) || digestName === undefined || signed === undefined || sid === undefined) return undefined;
  const asSet = derOf(attributes);
  // They stand as [0] and are signed as what they are, a SET OF (RFC 5652, 5.4).
  asSet[0] = 0x31;
  return {
    issuerAndSerial: isTagged(sid, 0) ? undefined : derOf(sid),
    digestAlgorithm: digestName,
    signedAttributes: asSet,
    signature: signed,
    signedValue: (oid) => valueOf(attributes, oid),
    unsignedValue: (oid) => (isTagged(unsigned, 1) ? valueOf(unsigned, oid) : undefined),
  };
}

function valueOf(attributes: AsnType, oid: string): AsnType | undefined {
  const attribute = partsOf(attributes).find((candidate) => oidOf(partsOf(candidate)[0]) === oid);
  return partsOf(partsOf(attribute)[1])[0];
}
