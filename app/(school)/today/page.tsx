import type { Metadata } from 'next';
import Link from 'next/link';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { can, mayEver } from '@/lib/access/can';
import { requireMay } from '@/lib/server/actor';
import { listPeople } from '@/lib/server/people/list-people';

export const metadata: Metadata = { title: 'Today' };

interface Step { readonly href: `/${string}`; readonly title: string; readonly why: string }

/** What there is to do next, by what the person may do. */
export default async function TodayPage() {
  const actor = await requireMay('school.read');
  const others = can(actor.role, 'people.invite') ? (await listPeople(actor)).filter((person) => person.isActive).length - 1 : null;
  const steps: readonly (Step | false)[] = [
    others === 0 && { href: '/people', title: 'Invite a second person', why: 'Nobody signs their own work. One prepares, another checks and signs.' },
    can(actor.role, 'place.change') && { href: '/places', title: 'Describe your place', why: 'The room, the charging spot and the store, with their sizes and doors.' },
    can(actor.role, 'pack.add') && { href: '/packs', title: 'Add your packs', why: 'One by one, a number of copies, or from a table.' },
    mayEver(actor.role, 'assessment.begin') && { href: '/assessments', title: 'Begin an assessment', why: 'About 25 minutes, saved at every step.' },
    can(actor.role, 'pack.check') && { href: '/packs', title: 'Check a pack', why: 'Voltages, look and feel; the verdict stands there at once.' },
  ];
  return (
    <Sheet>
      <PageHead title="What to do next" lead={`You are signed in as ${actor.name}.`} />
      <Section id="next" title="In this order">
        <ol className="rows">
          {steps.filter((step) => step !== false).map((step) => <li key={step.title}><h3><Link href={step.href} prefetch={false}>{step.title}</Link></h3><p className="small muted">{step.why}</p></li>)}
        </ol>
      </Section>
    </Sheet>
  );
}
