import { z } from 'zod';
import { changes, count, id, moment, none, sha256, words } from './parts';

const reason = z.strictObject({ reason: words });

/**
 * Of incidents and of events at a venue; the subject is the one or the other. Of the persons affected nothing stands
 * here: an entry cannot be removed, and they may ask for it.
 */
export const INCIDENT_EVENTS = {
  'incident.recorded': z.strictObject({ number: count, happenedAt: moment, kinds: z.array(id), packs: z.array(words), persons: count }),
  'incident.corrected': z.strictObject({ number: count, field: words, reason: words }),
  'incident.followed-up': z.strictObject({ kind: words }),
  'incident.photo-added': z.strictObject({ fileId: id, sha256 }),
  'incident.photo-removed': z.strictObject({ fileId: id, reason: words }),
  'incident.closed': z.strictObject({ note: words }),
  'incident.opened-again': reason,

  'event.begun': z.strictObject({ title: words, siteId: id, startsAt: moment }),
  'event.changed': z.strictObject({ changes }),
  'event.packs-chosen': z.strictObject({ labels: z.array(words) }),
  'event.line-accepted': z.strictObject({ lineId: id, reason: words }),
  'event.submitted': none,
  'event.taken-back': none,
  'event.returned': reason,
  'event.signed': z.strictObject({ part: z.enum(['preparer', 'officer']), documentId: id, sha256 }),
  'event.withdrawn': reason,
  'event.cancelled': reason,
};
