import { z } from 'zod';
import { line } from '@/lib/forms/fields';
import { AreaInputSchema } from './area-input';
import { SiteInputSchema } from './site-input';

const revision = z.coerce.number().int();
const siteId = line('Choose a place');
const areaId = line('Choose an area');

/** What a form names besides the fields of a site or an area: which one, and from which revision it was filled in. */
export const ChangeSiteSchema = z.intersection(z.object({ siteId, revision }).transform((target) => ({ target })), SiteInputSchema.transform((input) => ({ input })));
export const AddAreaSchema = z.intersection(z.object({ siteId }).transform((target) => ({ target })), AreaInputSchema.transform((input) => ({ input })));
export const ChangeAreaSchema = z.intersection(z.object({ siteId, areaId, revision }).transform((target) => ({ target })), AreaInputSchema.transform((input) => ({ input })));

/** Putting away asks: a site or an area is named until nothing refers to it any more. */
export const PutAwaySiteSchema = z.object({ siteId, sure: z.literal('yes', { error: 'Tick that you want to put it away' }) });
export const BringBackSiteSchema = z.object({ siteId });
export const BringBackAreaSchema = z.object({ siteId, areaId });
export const PutAwayAreaSchema = PutAwaySiteSchema.extend({ areaId });
