import { randomUUID } from 'node:crypto';
import { currentContent } from '@/lib/content/editions';
import { packVerdict } from '@/lib/core/battery/pack-verdict';
import { openDatabase } from '@/lib/db/client';
import { findMember } from '@/lib/db/people/find-member';
import { recordCheck } from '@/lib/db/packs/record-check';
import { soundPack } from '@/tests/support/second-pack-limits';
import { SIGN_INS } from './sign-ins';

/** Place, packs and people of an away event, as a season of work leaves them: one pack more is swollen. */
export const EVENT_WORLD = { venue: 'Riverside sports centre', packs: 18, prefix: 'E-', swollen: 'E-99' } as const;

/** Writes a venue and packs that were checked today into the server's database: on its pages that takes an hour. */
export async function makeEventWorld(): Promise<void> {
  const url = process.env.E2E_DATABASE_URL;
  if (url === undefined) throw new Error('E2E_DATABASE_URL is set by playwright.config.ts');
  const db = openDatabase(url);
  try {
    const user = await db.user.findFirstOrThrow({ where: { email: SIGN_INS.organiser.email }, select: { id: true } });
    const organiser = await findMember(db, user.id);
    if (organiser === null) throw new Error('the first run has not made the organiser');
    const at = new Date();
    await db.site.create({ data: { schoolId: organiser.schoolId, name: EVENT_WORLD.venue, kind: 'away', address: '8 Mill Road, gate C', createdAt: at } });
    const labels = [...Array.from({ length: EVENT_WORLD.packs }, (_one, index) => `${EVENT_WORLD.prefix}${String(index + 1).padStart(2, '0')}`), EVENT_WORLD.swollen];
    for (const label of labels) {
      const id = randomUUID();
      await db.pack.create({ data: { id, schoolId: organiser.schoolId, label, labelKey: label.toLowerCase(), series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20', batch: 'event batch', secondHand: false, state: 'in-use', stateSince: at, createdAt: at } });
      const measures = { ...soundPack, cellMin: 3.79, cellMax: 3.81, swollen: label === EVENT_WORLD.swollen };
      await recordCheck(db, organiser, at, { packId: id, purpose: 'plain', contentVersion: currentContent.version, note: null, found: { measures, cellVolts: [3.79, 3.8, 3.8, 3.81], resistance: [], result: packVerdict(currentContent.packLimits, measures) } });
    }
  } finally {
    await db.$disconnect();
  }
}
