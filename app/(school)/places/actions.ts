'use server';

import { AddAreaSchema, BringBackAreaSchema, BringBackSiteSchema, ChangeAreaSchema, ChangeSiteSchema, PutAwayAreaSchema, PutAwaySiteSchema } from '@/lib/places/place-commands';
import { SiteInputSchema } from '@/lib/places/site-input';
import { guardedAction } from '@/lib/server/forms/guarded-action';
import { addArea, addSite, bringBack, changeArea, changeSite, putAway } from '@/lib/server/places/write-places';

export const addSiteAction = guardedAction({ may: 'place.change', schema: SiteInputSchema, run: (input, actor) => addSite(actor, input) });

export const changeSiteAction = guardedAction({ may: 'place.change', schema: ChangeSiteSchema, run: ({ target, input }, actor) => changeSite(actor, target.siteId, input, target.revision) });

export const addAreaAction = guardedAction({ may: 'place.change', schema: AddAreaSchema, run: ({ target, input }, actor) => addArea(actor, target.siteId, input) });

export const changeAreaAction = guardedAction({ may: 'place.change', schema: ChangeAreaSchema, run: ({ target, input }, actor) => changeArea(actor, target, input, target.revision) });

export const putAwaySiteAction = guardedAction({ may: 'place.archive', schema: PutAwaySiteSchema, run: ({ siteId }, actor) => putAway(actor, { kind: 'site', id: siteId }, '/places') });

export const putAwayAreaAction = guardedAction({ may: 'place.archive', schema: PutAwayAreaSchema, run: ({ siteId, areaId }, actor) => putAway(actor, { kind: 'area', id: areaId }, `/places/${siteId}`) });

export const bringBackSiteAction = guardedAction({ may: 'place.archive', schema: BringBackSiteSchema, run: ({ siteId }, actor) => bringBack(actor, { kind: 'site', id: siteId }) });

export const bringBackAreaAction = guardedAction({ may: 'place.archive', schema: BringBackAreaSchema, run: ({ areaId }, actor) => bringBack(actor, { kind: 'area', id: areaId }) });
