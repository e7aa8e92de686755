'use server';

import { ChangeAdultsSchema } from '@/lib/events/adults-input';
import { ChangeTravelSchema, ChangeVenueSchema } from '@/lib/events/details-input';
import { ChangeBasicsSchema, CopyEventSchema } from '@/lib/events/event-input';
import { ShareSchema, TakeBackSchema } from '@/lib/events/links';
import { AddPackSchema, ChangePacksSchema } from '@/lib/events/packs-input';
import { AcceptLineSchema, CancelEventSchema, HandOverEventSchema, MakePaperSchema, ReturnEventSchema, SignEventSchema, WithdrawEventSchema } from '@/lib/events/signing-input';
import { addPack } from '@/lib/server/events/add-pack';
import { makeUnsigned } from '@/lib/server/events/read-papers';
import { share, takeLinkBack } from '@/lib/server/events/share';
import { handOver, signOff } from '@/lib/server/events/sign-events';
import { acceptLine, callOff, copy, openAgain, saveAdults, saveBasics, saveDetails, savePacks, sendBack, takeFileBack } from '@/lib/server/events/write-events';
import { guardedAction } from '@/lib/server/forms/guarded-action';

export const copyAction = guardedAction({ may: 'event.begin', schema: CopyEventSchema, run: ({ eventId }, actor) => copy(actor, eventId) });

export const saveBasicsAction = guardedAction({ may: 'event.change', schema: ChangeBasicsSchema, run: (input, actor) => saveBasics(actor, input) });

export const saveAdultsAction = guardedAction({ may: 'event.change', schema: ChangeAdultsSchema, run: (input, actor) => saveAdults(actor, input) });

export const savePacksAction = guardedAction({ may: 'event.change', schema: ChangePacksSchema, run: (input, actor) => savePacks(actor, input) });

export const addPackAction = guardedAction({ may: 'event.change', schema: AddPackSchema, run: (input, actor) => addPack(actor, input) });

export const saveVenueAction = guardedAction({ may: 'event.change', schema: ChangeVenueSchema, run: (input, actor) => saveDetails(actor, input) });

export const saveTravelAction = guardedAction({ may: 'event.change', schema: ChangeTravelSchema, run: (input, actor) => saveDetails(actor, input) });

export const handOverAction = guardedAction({ may: 'event.submit', schema: HandOverEventSchema, run: (input, actor) => handOver(actor, input) });

export const returnAction = guardedAction({ may: 'event.return', schema: ReturnEventSchema, run: (input, actor) => sendBack(actor, input) });

export const acceptLineAction = guardedAction({ may: 'event.accept-line', schema: AcceptLineSchema, run: (input, actor) => acceptLine(actor, input) });

export const signAction = guardedAction({ may: 'event.sign-as-officer', schema: SignEventSchema, run: (input, actor) => signOff(actor, input) });

export const withdrawAction = guardedAction({ may: 'event.withdraw', schema: WithdrawEventSchema, run: (input, actor) => takeFileBack(actor, input) });

export const reopenAction = guardedAction({ may: 'event.change', schema: CopyEventSchema, run: ({ eventId }, actor) => openAgain(actor, eventId) });

export const cancelAction = guardedAction({ may: 'event.cancel', schema: CancelEventSchema, run: (input, actor) => callOff(actor, input) });

export const makePaperAction = guardedAction({ may: 'document.read', schema: MakePaperSchema, run: (input, actor) => makeUnsigned(actor, input) });

export const shareAction = guardedAction({ may: 'link.share', schema: ShareSchema, run: (input, actor) => share(actor, input) });

export const takeBackAction = guardedAction({ may: 'link.revoke', schema: TakeBackSchema, run: (input, actor) => takeLinkBack(actor, input) });
