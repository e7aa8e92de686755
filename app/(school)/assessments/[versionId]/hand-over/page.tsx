import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { Empty } from '@/app/_components/ui/empty';
import { ButtonLink } from '@/app/_components/ui/button';
import { Icon } from '@/app/_components/ui/icon';
import { Notice } from '@/app/_components/ui/notice';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { dayAfter } from '@/lib/assessments/acceptance';
import { requireMay } from '@/lib/server/actor';
import { officersFor } from '@/lib/server/signing/officers';
import { preparedPaper } from '@/lib/server/signing/paper-view';
import { type ResultView, resultView } from '@/lib/server/signing/result-view';
import { ChooseOfficer } from './choose-officer';
import { SignPaper } from './sign-paper';

export const metadata: Metadata = { title: 'Hand over' };

interface PageProps {
  readonly params: Promise<{ readonly versionId: string }>;
  readonly searchParams: Promise<{ readonly officer?: string | string[]; readonly until?: string | string[] }>;
}

/** The longest an assessment may hold, chosen before anybody chooses otherwise. */
const A_YEAR = 365;

/** Who checks it and until when it is to hold; then the paper itself, and the preparer's signature. */
export default async function HandOverPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('assessment.submit');
  const [{ versionId }, asked] = [await params, await searchParams];
  const view = await resultView(actor, versionId);
  if (view === null) notFound();
  const { version, may, words } = view;
  const head = (
    <PageHead
      crumb={<><Link href={`/assessments/${versionId}/result`} prefetch={false}><Icon name="left" />Result</Link><span>{version.title}, version {version.number}</span></>}
      title={may.signAgain ? 'Read the changed paper, then sign it again' : 'Read the paper, then hand it over'}
      lead="You sign it as the one who prepared it. The officer then signs the very same file, or returns it."
    />
  );
  if (!may.handOver && !may.signAgain) return <Sheet>{head}<Notice title={words.title} level={2}><p>{words.next}</p></Notice></Sheet>;
  const officers = await officersFor(actor, version.preparedById);
  if (officers.length === 0) return <Sheet>{head}<Empty level={2} title="No officer to hand it to"><p>Nobody signs both as preparer and as officer. Ask for another safety officer to be invited to the school.</p><p className="row"><ButtonLink href="/people">People of the school</ButtonLink></p></Empty></Sheet>;
  const chosen = chosenOf(view, officers, asked);
  const ready = await preparedPaper(actor, versionId, chosen);
  return (
    <Sheet>
      {head}
      <ChooseOfficer versionId={versionId} officers={officers} chosen={chosen} today={view.today} last={dayAfter(view.today, A_YEAR)} fault={ready.ok ? null : ready.why} />
      {ready.ok ? <SignPaper view={view} ready={ready} chosen={chosen} /> : null}
    </Sheet>
  );
}

function chosenOf({ version, today }: ResultView, officers: readonly { readonly value: string }[], asked: { readonly officer?: string | string[]; readonly until?: string | string[] }) {
  const wanted = typeof asked.officer === 'string' ? asked.officer : version.scope.officerId;
  const officerId = officers.some(({ value }) => value === wanted) ? wanted : (officers[0]?.value ?? '');
  const before = version.reviewBy !== null && version.reviewBy > today ? version.reviewBy : dayAfter(today, A_YEAR);
  return { officerId, reviewBy: typeof asked.until === 'string' && asked.until !== '' ? asked.until : before };
}
