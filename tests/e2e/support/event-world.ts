import { openDatabase } from '@/lib/db/client';
import { SIGN_INS } from './sign-ins';

/** Place and packs of an away event; one pack more is swollen and isolated. */
export interface EventWorld { readonly venue: string; readonly packs: number; readonly prefix: string; readonly swollen: string; readonly batch: string }

/** As a season of work leaves them. */
export const EVENT_WORLD: EventWorld = { venue: 'Riverside sports centre', packs: 18, prefix: 'E-', swollen: 'E-99', batch: 'event batch' };

const FIT = { verdict: 'fit', fired: [], missing: [], blocks: [], incomplete: null, endsAt: null };

/** Writes a venue and packs that were checked today into the server's database: on its pages that takes an hour. */
export async function makeEventWorld({ venue, packs, prefix, swollen, batch } = EVENT_WORLD): Promise<void> {
  const url = process.env.E2E_DATABASE_URL;
  if (url === undefined) throw new Error('E2E_DATABASE_URL is set by playwright.config.ts');
  const db = openDatabase(url);
  try {
    const { schoolId, personId } = await db.membership.findFirstOrThrow({ where: { person: { user: { email: SIGN_INS.organiser.email } } }, select: { schoolId: true, personId: true } });
    const at = new Date();
    await db.site.create({ data: { schoolId, name: venue, kind: 'away', address: '8 Mill Road, gate C', createdAt: at } });
    const sound = Array.from({ length: packs }, (_one, index) => `${prefix}${String(index + 1).padStart(2, '0')}`);
    for (const label of [...sound, swollen]) {
      const state = label === swollen ? 'isolated' : 'in-use';
      const { id: packId } = await db.pack.create({ data: { schoolId, label, labelKey: label.toLowerCase(), series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20', batch, secondHand: false, state, stateSince: at, createdAt: at } });
      await db.packCheck.create({ data: { schoolId, packId, purpose: 'plain', measuresJson: JSON.stringify({ cellMin: 3.79, cellMax: 3.81 }), contentVersion: '2.0.0', verdict: 'fit', resultJson: JSON.stringify(FIT), byId: personId, byName: SIGN_INS.organiser.name, at } });
    }
  } finally {
    await db.$disconnect();
  }
}
