'use server';

import { CopyPackSchema } from '@/lib/packs/copy-pack';
import { CheckPostSchema } from '@/lib/packs/checks/check-post';
import { ChangePackSchema } from '@/lib/packs/change-pack-input';
import { MovePackSchema } from '@/lib/packs/states/move-pack';
import { SayWhereSchema } from '@/lib/packs/states/say-where';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { addPackPhoto, PackPhotoSchema, takePackPhotoAway } from '@/lib/server/packs/pack-photos';
import { takePackCheck } from '@/lib/server/packs/check-pack';
import { changePack, enterCopies, movePack, placePack } from '@/lib/server/packs/write-packs';

export const copyPackAction = guardedAction({ may: 'pack.add', schema: CopyPackSchema, run: (input, actor) => enterCopies(actor, input) });

export const changePackAction = guardedAction({ may: 'pack.change', schema: ChangePackSchema, run: (command, actor) => changePack(actor, command) });

/** Which changes a role may make stands with each of them (lib/packs/states/moves.ts); towards caution everybody may. */
export const movePackAction = guardedAction({ may: 'pack.isolate', schema: MovePackSchema, run: (command, actor) => movePack(actor, command) });

export const sayWhereAction = guardedAction({ may: 'pack.say-where', schema: SayWhereSchema, run: (command, actor) => placePack(actor, command) });

export const checkPackAction = guardedAction({ may: 'pack.check', schema: CheckPostSchema, run: (post, actor) => takePackCheck(actor, post) });

export const addPackPhotoAction = guardedAction({ may: 'pack.change', schema: PackPhotoSchema, run: (raw, actor) => addPackPhoto(actor, raw) });

export const removePackPhotoAction = guardedAction({ may: 'pack.change', schema: PackPhotoSchema, run: (input, actor) => takePackPhotoAway(actor, input) });
