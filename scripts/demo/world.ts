import type { Role } from '@/lib/access/roles';
import { currentContent } from '@/lib/content/editions';
import type { Db } from '@/lib/db/client';
import type { Member } from '@/lib/db/people/find-member';
import type { Calendar } from './calendar';

/** What the story of the demo is told with. */
export interface World {
  readonly db: Db;
  readonly calendar: Calendar;
  readonly password: string;
  /** where the program will be reached, for the code on papers */
  readonly address: string;
  readonly people: Readonly<Record<Role, Member>>;
  readonly places: Places;
  /** ids of packs by label; grows as packs are entered */
  readonly packs: Map<string, string>;
}

export interface Places { readonly siteId: string; readonly chargingId: string; readonly storageId: string }

export const LIMITS = currentContent.packLimits;
export const CONTENT_VERSION = currentContent.version;

/** One thing that was done, and when. */
export interface Entry { readonly at: Date; readonly what: string; readonly run: (at: Date) => Promise<void> }

/** Does everything in the order of time, as it would have been done. */
export async function inOrderOfTime(entries: readonly Entry[]): Promise<void> {
  const sorted = [...entries].sort((one, other) => one.at.getTime() - other.at.getTime());
  for (const entry of sorted) await entry.run(entry.at);
}

interface Refusal { readonly ok: false; readonly faults?: readonly { readonly message: string }[]; readonly why?: string }

/** What was done, or an error that names what the story got wrong: a use case refused it. */
export function done<Result extends { readonly ok: true } | Refusal>(what: string, result: Result): Extract<Result, { readonly ok: true }> {
  if (isDone(result)) return result;
  const { why, faults } = result as Refusal;
  throw new Error(`The demo cannot go on. ${what}: ${why ?? faults?.map(({ message }) => message).join('; ') ?? 'refused'}`);
}

function isDone<Result extends { readonly ok: boolean }>(result: Result): result is Extract<Result, { readonly ok: true }> {
  return result.ok;
}
