import type { PackLimits, PackUse } from '@/lib/content/model';
import type { CheckRecord } from '../checks/check-record';
import type { Pack } from '../pack';
import { stateWords } from './pack-states';

export interface BlockedUses {
  readonly uses: readonly PackUse[];
  readonly why: string;
}

const ALL: readonly PackUse[] = ['charge', 'fly', 'travel'];

/**
 * What a pack may not be used for until it is checked again. A pack nobody has checked is held to what the content says
 * of an incomplete check: not looking does not count as good.
 * @param last its latest check, null when there is none
 */
export function blockedUses({ check }: PackLimits, pack: Pick<Pack, 'state'>, last: Pick<CheckRecord, 'result'> | null): BlockedUses {
  if (pack.state !== 'in-use' && pack.state !== 'watch') return { uses: ALL, why: `it is ${stateWords(pack.state)}` };
  if (last === null) return { uses: check?.incomplete.blocks ?? ALL, why: check?.incomplete.text ?? 'not checked yet' };
  const { blocks, fired, incomplete } = last.result;
  const reasons = [...fired.filter((rule) => rule.blocks === null || rule.blocks.length > 0).map(({ text }) => text), ...(incomplete === null ? [] : [incomplete])];
  return { uses: blocks ?? ALL, why: reasons.length === 0 ? 'the last check found no sign' : reasons.join('; ') };
}

const USE_WORDS: Readonly<Record<PackUse, string>> = { charge: 'charge', fly: 'fly', travel: 'take along' };

/** "Do not charge, fly or take along": what is stopped, as an order; null when nothing is. */
export function blockedWords(uses: readonly PackUse[]): string | null {
  const words = uses.map((use) => USE_WORDS[use]);
  const last = words.pop();
  if (last === undefined) return null;
  return words.length === 0 ? `Do not ${last}` : `Do not ${words.join(', ')} or ${last}`;
}
