import { openDatabase } from '@/lib/db/client';
import { SIGN_INS } from './sign-ins';

/** Place and packs of an away event, as a season of work leaves them: one pack more is swollen and isolated. */
export const EVENT_WORLD = { venue: 'Riverside sports centre', packs: 18, prefix: 'E-', swollen: 'E-99' } as const;

const FIT = { verdict: 'fit', fired: [], missing: [], blocks: [], incomplete: null, endsAt: null };

/** Writes a venue and packs that were checked today into the server's database: on its pages that takes an hour. */
export async function makeEventWorld(): Promise<void> {
  const url = process.env.E2E_DATABASE_URL;
  if (url === undefined) throw new Error('E2E_DATABASE_URL is set by playwright.config.ts');
  const db = openDatabase(url);
  try {
    const { schoolId, personId } = await db.membership.findFirstOrThrow({ where: { person: { user: { email: SIGN_INS.organiser.email } } }, select: { schoolId: true, personId: true } });
    const at = new Date();
    await db.site.create({ data: { schoolId, name: EVENT_WORLD.venue, kind: 'away', address: '8 Mill Road, gate C', createdAt: at } });
    const sound = Array.from({ length: EVENT_WORLD.packs }, (_one, index) => `${EVENT_WORLD.prefix}${String(index + 1).padStart(2, '0')}`);
    for (const label of [...sound, EVENT_WORLD.swollen]) {
      const state = label === EVENT_WORLD.swollen ? 'isolated' : 'in-use';
      const { id: packId } = await db.pack.create({ data: { schoolId, label, labelKey: label.toLowerCase(), series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20', batch: 'event batch', secondHand: false, state, stateSince: at, createdAt: at } });
      await db.packCheck.create({ data: { schoolId, packId, purpose: 'plain', measuresJson: JSON.stringify({ cellMin: 3.79, cellMax: 3.81 }), contentVersion: '2.0.0', verdict: 'fit', resultJson: JSON.stringify(FIT), byId: personId, byName: SIGN_INS.organiser.name, at } });
    }
  } finally {
    await db.$disconnect();
  }
}
