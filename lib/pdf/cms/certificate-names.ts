import { derOf, embedded, isTagged, partsOf, readDer, sequence } from './der';

/** Issuer and serial of a certificate in DER, as one value: how a signer is named (RFC 5280, 4.1; RFC 5652, 10.2.4). Undefined for anything else. */
export function issuerAndSerial(der: Uint8Array): Uint8Array | undefined {
  const names = certificateNames(der);
  return names === undefined ? undefined : derOf(sequence(embedded(names.issuer), embedded(names.serial)));
}

/** Issuer and serial of a certificate, each in DER as it stands there; undefined for anything else. */
export function certificateNames(der: Uint8Array): { readonly issuer: Uint8Array; readonly serial: Uint8Array } | undefined {
  const tbs = partsOf(partsOf(readDer(der)?.value)[0]);
  const fields = isTagged(tbs[0], 0) ? tbs.slice(1) : tbs;
  const [serial, , issuer] = fields;
  if (serial === undefined || issuer === undefined) return undefined;
  return { serial: derOf(serial), issuer: derOf(issuer) };
}
