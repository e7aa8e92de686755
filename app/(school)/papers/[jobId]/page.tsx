import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireActor } from '@/lib/server/actor';
import { paperJob } from '@/lib/server/papers/begin-paper';
import type { PaperJob } from '@/lib/server/papers/paper-jobs';
import { cancelPaperAction } from './actions';
import { LookAgain } from './look-again';
import { PhaseList } from './phase-list';

export const metadata: Metadata = { title: 'A paper is being made' };

interface PageProps { readonly params: Promise<{ readonly jobId: string }> }

/** How far a paper is that this person asked for. It looks again by itself, and leads on when the paper is done. */
export default async function PaperJobPage({ params }: PageProps) {
  const actor = await requireActor();
  const { jobId } = await params;
  const job = paperJob(actor, jobId);
  if (job === null) return <Gone />;
  if (job.then !== null) redirect(job.then);
  const head = (title: string, lead?: string) => <PageHead crumb={<Link href={job.back} prefetch={false}><Icon name="left" />Back</Link>} title={title} lead={lead} />;
  if (job.phase !== 'setting' && job.phase !== 'keeping') return <Sheet>{head('The paper was not made', job.title)}<Ended job={job} /></Sheet>;
  return (
    <Sheet>
      {head('The paper is being made', job.title)}
      <Section id="progress" title="How far it is">
        <PhaseList job={job} />
        <LookAgain address={`/papers/${job.id}`} />
        {job.phase === 'keeping' ? null : (
          <ActionForm action={cancelPaperAction} id="cancel-paper" faultsTitle="Not cancelled">
            <FormHidden name="jobId" value={job.id} />
            <p className="row"><FormSubmit kind="outline">Cancel</FormSubmit></p>
            <p className="small muted">Until the last step nothing is signed and nothing is kept.</p>
          </ActionForm>
        )}
      </Section>
    </Sheet>
  );
}

function Ended({ job: { phase, why, back } }: { readonly job: PaperJob }) {
  const again = <p className="row"><ButtonLink href={back}>To where you began</ButtonLink></p>;
  if (phase === 'cancelled') return <Notice title="You cancelled it" level={2}><p>Nothing was signed, and nothing was kept.</p>{again}</Notice>;
  return <Notice kind="act" title={phase === 'refused' ? 'It no longer fits' : 'Something went wrong'} level={2}><p>{why}</p>{again}</Notice>;
}

function Gone() {
  return (
    <Sheet>
      <PageHead title="Nothing is being made here" />
      <Notice title="It ended, or the program was started anew" level={2}>
        <p>If the paper was kept, it stands where it belongs, with its number. If it does not stand there, nothing was signed: ask for it again.</p>
        <p className="row"><ButtonLink href="/today">Go to Today</ButtonLink></p>
      </Notice>
    </Sheet>
  );
}
