import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { type JsonValue, canonicalJson } from './canonical-json';

/** @returns SHA-256 (FIPS 180-4) of the canonical JSON of a value in UTF-8, as 64 hexadecimal digits */
export function fingerprint(value: JsonValue): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
}
