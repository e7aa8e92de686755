import { createHash, verify } from 'node:crypto';
import { buildSignedData, signedAttributes } from '../cms/build-signed-data';
import { checkSigner, readPublicKey } from '../cms/check-signer';
import { derOf, readDer } from '../cms/der';
import { TIMESTAMP_TOKEN } from '../cms/oids';
import { readSignedData, type SignedData } from '../cms/read-signed-data';
import { readTimestamp } from '../cms/timestamp';
import { isIssuedBy } from '../certificates/certificate-facts';
import type { FindingKind } from './file-check';

/** What a signature by itself says about the bytes it covers. */
export interface ContainerCheck {
  readonly certificate: Uint8Array | undefined;
  readonly issuedHere: boolean;
  readonly stampedAt: Date | undefined;
  readonly fault: FindingKind | undefined;
}

/**
 * Checks the value of /Contents: one signature in DER, then zeros and nothing else.
 * @param authorities certificates that this school has issued with, DER, old ones too
 */
export function checkContainer(contents: Uint8Array, covered: Uint8Array, authorities: readonly Uint8Array[]): ContainerCheck {
  const length = readDer(contents)?.length ?? 0;
  const der = contents.subarray(0, length);
  const signed = length === 0 ? undefined : readSignedData(der);
  if (signed === undefined || contents.subarray(length).some((byte) => byte !== 0)) return { certificate: undefined, issuedHere: false, stampedAt: undefined, fault: 'contents' };
  const check = checkSigner(signed, covered);
  const certificate = check.certificate;
  const issuer = certificate === undefined || readPublicKey(certificate) === undefined ? undefined : authorities.find((authority) => isIssuedBy(certificate, authority));
  if (certificate === undefined || issuer === undefined) return { certificate, issuedHere: false, stampedAt: undefined, fault: check.state === 'broken' ? 'digest' : undefined };
  return { certificate, issuedHere: true, ...checkOwn(der, signed, { certificate, issuer, digest: sha256(covered) }) };
}

/**
 * A signature with a certificate of this school must be, byte for byte, what is made here out of the same parts:
 * some places of the format are covered by no signature, and a change there is to be found as well.
 */
function checkOwn(der: Uint8Array, { signer }: SignedData, parts: { readonly certificate: Uint8Array; readonly issuer: Uint8Array; readonly digest: Uint8Array }): Pick<ContainerCheck, 'stampedAt' | 'fault'> {
  const attributes = signedAttributes(parts);
  const key = readPublicKey(parts.certificate);
  if (key === undefined || !Buffer.from(attributes).equals(signer.signedAttributes) || !verify('sha256', attributes, key, signer.signature)) return { stampedAt: undefined, fault: 'digest' };
  const token = signer.unsignedValue(TIMESTAMP_TOKEN);
  const tokenDer = token === undefined ? undefined : derOf(token);
  const stamp = tokenDer === undefined ? undefined : readTimestamp(tokenDer, signer.signature);
  if (tokenDer !== undefined && stamp === undefined) return { stampedAt: undefined, fault: 'timestamp' };
  const asMadeHere = Buffer.from(buildSignedData(parts, signer.signature, tokenDer)).equals(der);
  return { stampedAt: stamp?.at, fault: asMadeHere ? undefined : 'container' };
}

function sha256(bytes: Uint8Array): Uint8Array {
  return new Uint8Array(createHash('sha256').update(bytes).digest());
}
