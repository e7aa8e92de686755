import Link from 'next/link';
import type { ReactNode } from 'react';
import { PackStateMark } from '@/app/_components/packs/pack-state-mark';
import { Finder } from '@/app/_components/ui/finder';
import type { PackFilter } from '@/lib/packs/pack-list';
import { PACK_STATES } from '@/lib/packs/states/pack-states';
import type { PackList } from '@/lib/server/packs/read-packs';

interface PackFiltersProps { readonly filter: PackFilter; readonly counts: PackList['counts'] }

/** Finds by words, and shows one state; both stand in the address, so that a list can be kept and sent. */
export function PackFilters({ filter, counts }: PackFiltersProps) {
  return (
    <div className="filters">
      <Finder action="/packs" name="find" words={filter.find} placeholder="label, batch, maker, place">
        {filter.state === null ? null : <input type="hidden" name="state" value={filter.state} />}
      </Finder>
      <nav aria-label="State">
        <ul className="chips">
          <li><StateLink filter={filter} state={null}>Here <b>{counts.here}</b></StateLink></li>
          {PACK_STATES.filter((state) => counts[state] > 0 || filter.state === state).map((state) => (
            <li key={state}><StateLink filter={filter} state={state}><PackStateMark state={state} /> {counts[state]}</StateLink></li>
          ))}
        </ul>
      </nav>
    </div>
  );
}

interface StateLinkProps { readonly filter: PackFilter; readonly state: PackFilter['state']; readonly children: ReactNode }

function StateLink({ filter, state, children }: StateLinkProps) {
  const query = new URLSearchParams({ ...(filter.find === '' ? {} : { find: filter.find }), ...(state === null ? {} : { state }) }).toString();
  return <Link href={query === '' ? '/packs' : `/packs?${query}`} prefetch={false} aria-current={filter.state === state ? 'true' : undefined}>{children}</Link>;
}
