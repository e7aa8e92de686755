import { can, mayEver } from '@/lib/access/can';
import type { TodayFacts } from './facts';
import { soon, type TodayItem } from './item';

/** What a new school does first, in this order; each step goes away when it is done. */
export function firstSteps({ setUp, role }: Pick<TodayFacts, 'setUp' | 'role'>): readonly TodayItem[] {
  const steps: readonly (TodayItem | false)[] = [
    setUp.people < 2 && can(role, 'people.invite') && soon({ id: 'first-people', title: 'Invite a second person', why: 'Nobody signs their own work. One prepares, another checks and signs.', href: '/people', verb: 'Invite somebody' }),
    setUp.sites === 0 && can(role, 'place.change') && soon({ id: 'first-place', title: 'Describe your place', why: 'The room, the charging spot and the store, with their sizes and doors.', href: '/places', verb: 'Add a place' }),
    setUp.packs === 0 && can(role, 'pack.add') && soon({ id: 'first-packs', title: 'Add your packs', why: 'One by one, a number of copies, or from a table.', href: '/packs', verb: 'Add packs' }),
    setUp.papers === 0 && mayEver(role, 'assessment.begin') && soon({ id: 'first-paper', title: 'Begin an assessment', why: 'About 25 minutes, saved at every step. Nobody should charge before it is signed.', href: '/assessments', verb: 'Begin' }),
  ];
  return steps.filter((step) => step !== false);
}
