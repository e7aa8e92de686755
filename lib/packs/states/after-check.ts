import type { PackVerdict } from '@/lib/content/model';
import type { FoundInCheck } from '../checks/check-record';
import type { NewState } from './new-state';
import type { PackState } from './pack-states';

/** What a verdict makes of a state: only ever towards caution, and never back in use by itself. */
const TOWARDS: Readonly<Record<PackVerdict, Partial<Record<PackState, PackState>>>> = {
  fit: {},
  watch: { 'in-use': 'watch' },
  retire: { 'in-use': 'retired', watch: 'retired' },
  isolate: { 'in-use': 'isolated', watch: 'isolated', retired: 'isolated', isolated: 'isolated' },
  leave: { 'in-use': 'isolated', watch: 'isolated', retired: 'isolated', isolated: 'isolated' },
};

/**
 * The state a pack gets at once by a check, with the signs as the reason; null when it keeps its own. An isolated pack
 * that shows a sign stays isolated, but from now on for a sign of its own, which bars release.
 */
export function stateAfterCheck(state: PackState, { result }: FoundInCheck): NewState | null {
  const to = result.verdict === null ? undefined : TOWARDS[result.verdict][state];
  if (to === undefined) return null;
  const deciding = result.fired.filter(({ verdict }) => verdict === result.verdict).map(({ text }) => text);
  const reason = deciding.length > 0 ? deciding.join('; ') : result.incomplete;
  return { to, reason: `Check: ${reason ?? 'by its verdict'}`, cause: to === 'isolated' ? 'sign' : null };
}
