'use server';

import { guardedAction } from '@/lib/server/forms/guarded-action';
import { importPacks, ImportSchema } from '@/lib/server/packs/import-packs';

export const importPacksAction = guardedAction({ may: 'pack.add', schema: ImportSchema, run: (input, actor) => importPacks(actor, input) });
