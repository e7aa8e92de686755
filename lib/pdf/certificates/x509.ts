// The package looks for this one's globals when it is loaded.
import 'reflect-metadata';
import * as x509 from '@peculiar/x509';

x509.cryptoProvider.set(globalThis.crypto);

export { x509 };

/** ECDSA on the curve P-256 with SHA-256: short keys and signatures, and every checker that was tried reads them. */
export const KEY_ALGORITHM = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const;

/**
 * A name in a certificate, with its organisation. Handed over as values and never as text: the package would take
 * a comma, an equals sign or a backslash in somebody's name for a form of its own.
 */
export function distinguishedName(commonName: string, organisation: string): InstanceType<typeof x509.Name> {
  return new x509.Name([{ CN: [{ utf8String: commonName }] }, { O: [{ utf8String: organisation }] }]);
}

/** A new pair of keys that may be exported, so that the private one can be sealed. */
export async function newKeys(): Promise<CryptoKeyPair> {
  return globalThis.crypto.subtle.generateKey(KEY_ALGORITHM, true, ['sign', 'verify']);
}

/** A private key as PKCS #8, the form that is sealed. */
export async function exportKey(key: CryptoKey): Promise<Uint8Array> {
  return new Uint8Array(await globalThis.crypto.subtle.exportKey('pkcs8', key));
}

/** A private key out of PKCS #8, for signing only and not to be exported again. */
export async function importKey(pkcs8: Uint8Array): Promise<CryptoKey> {
  return globalThis.crypto.subtle.importKey('pkcs8', Uint8Array.from(pkcs8), KEY_ALGORITHM, false, ['sign']);
}
