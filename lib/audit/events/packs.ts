import { z } from 'zod';
import { changes, count, id, sha256, words } from './parts';

const label = words;

/** Of packs, their checks and the sessions they were used in. The subject is the pack, the session or the hand-over. */
export const PACK_EVENTS = {
  'pack.added': z.strictObject({ label }),
  'packs.imported': z.strictObject({ labels: z.array(label) }),
  'pack.changed': z.strictObject({ label, changes }),
  'pack.state-changed': z.strictObject({
    label, from: words.nullable(), to: words, reason: words, cause: words.nullable(),
    checkId: id.nullable(), incidentId: id.nullable(),
  }),
  'pack.placed': z.strictObject({ label, place: words, note: words.nullable(), inSand: z.boolean().nullable() }),
  'pack.checked': z.strictObject({ label, checkId: id, purpose: words, verdict: words.nullable(), fired: z.array(id) }),
  'pack.photo-added': z.strictObject({ label, fileId: id, sha256 }),
  'pack.photo-removed': z.strictObject({ label, fileId: id }),
  'pack.released': z.strictObject({ label, checkId: id, reason: words, hoursApart: z.number() }),
  'packs.handed-over': z.strictObject({ labels: z.array(label), collectedBy: words, receiver: words }),

  'session.opened': z.strictObject({ siteId: id }),
  'session.stopped': z.strictObject({ siteId: id, missing: z.array(words) }),
  'session.changed': z.strictObject({ changes }),
  'session.charges-logged': z.strictObject({ packs: count, charges: count }),
  'session.crashes-logged': z.strictObject({ labels: z.array(label) }),
  'session.corrected': z.strictObject({ label, chargesFrom: count, chargesTo: count, crashesFrom: count.nullable(), crashesTo: count, reason: words }),
  'session.closed': z.strictObject({ packs: count, charges: count }),
};
