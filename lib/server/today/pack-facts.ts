import 'server-only';
import { needOf, type ListedPack } from '@/lib/packs/pack-list';
import type { PackFact, PackNeed } from '@/lib/today/facts';
import type { SchoolPackLimits } from '@/lib/packs/school-rules';

/** The packs that need somebody, by label, and what each needs. */
export function packFacts(packs: readonly ListedPack[], limits: SchoolPackLimits, now: Date): readonly PackFact[] {
  return packs.flatMap((listed): readonly PackFact[] => {
    const need = needOf(limits, listed, now);
    if (need === null) return [];
    const { id, label } = listed.pack;
    return [{ id, label, words: need.words, need: kindOf(listed, need.urgency) }];
  }).sort((one, other) => BY_LABEL.compare(one.label, other.label));
}

const BY_LABEL = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Where the register says that it presses, the reason is one of three; the places and days are its own. */
function kindOf({ pack, lastCheck, isolatedAt }: ListedPack, urgency: 'now' | 'wait'): PackNeed {
  if (pack.state === 'isolated') {
    if (isolatedAt === null) return 'say where';
    if (urgency === 'wait') return 'waits';
    return isolatedAt === 'outdoor-spot' || isolatedAt === 'fire-service' ? 'waits too long' : 'wrong place';
  }
  if (pack.state === 'retired') return 'waits';
  return lastCheck === null ? 'never checked' : 'on watch';
}
