import { notFound, redirect } from 'next/navigation';
import { firstOpenPage } from '@/lib/assessments/walk';
import { requireMay } from '@/lib/server/actor';
import { openVersion } from '@/lib/server/assessments/open-version';

/** Goes on where the first question is open; where none is, to the overview. */
export default async function WalkPage({ params }: { readonly params: Promise<{ readonly versionId: string }> }) {
  const actor = await requireMay('assessment.read');
  const { versionId } = await params;
  const open = await openVersion(actor, versionId);
  if (open === null) notFound();
  const page = firstOpenPage(open.walk);
  redirect(page === null || open.closed !== null ? `/assessments/${versionId}` : `/assessments/${versionId}/walk/${page.id}`);
}
