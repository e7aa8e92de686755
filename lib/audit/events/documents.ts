import { z } from 'zod';
import { count, id, moment, none, sha256, words } from './parts';

/** Of papers, the certificates they are signed with, and links to them. The subject is the one or the other. */
export const DOCUMENT_EVENTS = {
  'document.made': z.strictObject({ number: words, kind: words, fingerprint: words, sha256 }),
  'document.signed': z.strictObject({ number: words, part: z.enum(['preparer', 'officer']), revision: count, certificateFingerprint: sha256, sha256 }),
  'document.replaced': z.strictObject({ number: words, byNumber: words }),
  'document.withdrawn': z.strictObject({ number: words, reason: words }),

  'authority.made': z.strictObject({ fingerprint: sha256, validUntil: moment }),
  'certificate.issued': z.strictObject({ personId: id, fingerprint: sha256, validUntil: moment }),
  'certificate.revoked': z.strictObject({ personId: id, fingerprint: sha256, reason: words }),

  'link.shared': z.strictObject({ purpose: words, forWhom: words, expiresAt: moment }),
  'link.answered': none,
  'link.revoked': none,
};
