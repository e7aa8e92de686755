import type { CertificateFacts } from '../certificates/certificate-facts';
import type { PdfFaultKind } from '../structure/pdf-fault';
import type { Span } from '../structure/objects';

/**
 * Something found wrong, and the bytes it is about.
 * - `byte-range`: the signature does not cover all of its revision but itself
 * - `contents`: what stands in the place of the signature is no signature, or more than one
 * - `digest`: what was signed is not what stands here
 * - `container`: the signature was put together in another way than it is here
 * - `certificate-period`: the certificate was not in force at the time the signature claims
 * - `timestamp`: the time stamp beside the signature does not fit it
 * - `after-last-signature`: bytes that no signature covers
 * - `cut-off`: something begun after the last signature that is there, whose end is missing
 * - `not-permitted`: added between two signatures, and more than a signature
 */
export type FindingKind = 'byte-range' | 'contents' | 'digest' | 'container' | 'certificate-period' | 'timestamp' | 'after-last-signature' | 'cut-off' | 'not-permitted';
export interface Finding extends Span { readonly kind: FindingKind }

/** One signature of a file. Name and times are what file and certificate say. */
export interface SignatureReport {
  /** the field that was signed: 'Preparer' or 'Officer' in a file made here */
  readonly role: string;
  /** the holder of the certificate; empty where there is none to read */
  readonly holder: string;
  readonly certificate: CertificateFacts | undefined;
  /** whether a certificate of this school vouches for the holder's */
  readonly issuedHere: boolean;
  readonly reason: string;
  /** by the clock of the computer that signed */
  readonly claimedAt: Date | undefined;
  /** by a time stamp service, whose certificate is for the reader to judge */
  readonly stampedAt: Date | undefined;
  /** which revision of the file it closes, counted from 1 */
  readonly revision: number;
  /** how many bytes from the beginning it covers, itself apart */
  readonly coversTo: number;
  /** SHA-256 of the file as it was then, hexadecimal: finds the document that this was */
  readonly fingerprint: string;
  readonly findings: readonly Finding[];
}

/** What the bytes of a file say by themselves, without asking which papers are in force. */
export type FileCheck =
  | { readonly state: 'unreadable'; readonly fault: PdfFaultKind; readonly fingerprint: string }
  /** a file without a signature: anyone can make one */
  | { readonly state: 'unsigned'; readonly fingerprint: string }
  | SignedCheck;

export interface SignedCheck {
  /**
   * - `changed`: not as it was when this school's people signed it
   * - `foreign`: a signature by somebody this school does not vouch for
   * - `unchanged`: every byte is covered and every signature holds
   */
  readonly state: 'changed' | 'foreign' | 'unchanged';
  readonly fingerprint: string;
  /** in the order of signing */
  readonly signatures: readonly SignatureReport[];
  /** fields that wait for a signature: with one of these the paper is not finished */
  readonly unsignedRoles: readonly string[];
  /** of the file as a whole */
  readonly findings: readonly Finding[];
}
