import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound, redirect } from 'next/navigation';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { openVersion } from '@/lib/server/assessments/open-version';
import { SettingsForm } from './settings-form';
import { VisitForm } from './visit-form';

export const metadata: Metadata = { title: 'Visit, matrix and effort' };

/** What the paper says besides answers: who has been there, and how risks are graded. */
export default async function ScopePage({ params }: { readonly params: Promise<{ readonly versionId: string }> }) {
  const actor = await requireMay('assessment.read');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  if (open.closed !== null) redirect(`/assessments/${versionId}`);
  const { version, walk } = open;
  return (
    <Sheet>
      <PageHead crumb={<Link href={`/assessments/${versionId}`} prefetch={false}><Icon name="left" />{version.title}</Link>} title="Visit, matrix and effort" />
      <Section id="visit" title="Who has been there"><VisitForm version={version} /></Section>
      <Section id="settings" title="How it is graded"><SettingsForm version={version} content={walk.content} /></Section>
    </Sheet>
  );
}
