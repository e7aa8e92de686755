'use server';

import { PackInputSchema } from '@/lib/packs/pack-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { enterPacks } from '@/lib/server/packs/write-packs';

export const addPackAction = guardedAction({
  may: 'pack.add',
  schema: PackInputSchema,
  run: async (input, actor) => {
    const added = await enterPacks(actor, [input], 'form');
    return added.ok ? { ok: true, then: `/packs/${added.ids[0] ?? ''}` } : added;
  },
});
