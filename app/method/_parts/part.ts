import type { Content } from '@/lib/content/model';

/** What every part of the method page is made from. */
export interface PartProps { readonly content: Content }
