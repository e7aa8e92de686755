import { z } from 'zod';
import { NOTHING_OPEN, type PageState } from './page-state';

/** What the page needs of `sessionStorage`; it lives as long as the tab and is never sent anywhere. */
export interface TabStorage {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

const KEY = 'sandbucket.try.v1';
/** Steps kept over a reload; more would fill the browser's allowance for no use. */
const STEPS_KEPT = 10;

const WholeSchema = z.record(z.string(), z.unknown());
const OpenSchema = z.object({
  whole: WholeSchema,
  source: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('example'), example: z.string() }),
    z.object({ kind: z.literal('own'), name: z.string() }),
  ]),
  edited: z.boolean(),
}).nullable();
const StateSchema = z.object({ open: OpenSchema, past: z.array(z.object({ before: OpenSchema, what: z.string() })) });

export type Kept = { readonly ok: true; readonly state: PageState } | { readonly ok: false; readonly reason: string };

/** What this tab kept, or why it cannot be used; an empty tab keeps nothing and that is no fault. */
export function readKept(storage: TabStorage): Kept {
  try {
    const text = storage.getItem(KEY);
    if (text === null) return { ok: true, state: NOTHING_OPEN };
    const parsed = StateSchema.safeParse(JSON.parse(text));
    if (parsed.success) return { ok: true, state: { ...parsed.data, trouble: null } };
    return { ok: false, reason: 'What this tab had kept was written by another version, so the page starts afresh.' };
  } catch (error) {
    return { ok: false, reason: `What this tab had kept cannot be read (${wordsOf(error)}), so the page starts afresh.` };
  }
}

/** Keeps the page for a reload of this tab. Returns why it could not, or null. */
export function keep(storage: TabStorage, state: PageState): string | null {
  try {
    if (state.open === null && state.past.length === 0) storage.removeItem(KEY);
    else storage.setItem(KEY, JSON.stringify({ open: state.open, past: state.past.slice(-STEPS_KEPT) }));
    return null;
  } catch (error) {
    return `This browser keeps nothing for this page (${wordsOf(error)}). Download the document before you leave.`;
  }
}

const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
