import type { Metadata } from 'next';
import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { mayEver } from '@/lib/access/can';
import { AssessmentQuerySchema } from '@/lib/assessments/list';
import { requireMay } from '@/lib/server/actor';
import { listAssessments } from '@/lib/server/assessments/list';
import { ListSearch } from './_parts/list-search';
import { VersionTable } from './_parts/version-table';

export const metadata: Metadata = { title: 'Assessments' };

interface PageProps { readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }

export default async function AssessmentsPage({ searchParams }: PageProps) {
  const actor = await requireMay('assessment.read');
  const query = AssessmentQuerySchema.parse(await searchParams);
  const { rows, all } = await listAssessments(actor, query);
  const mayBegin = mayEver(actor.role, 'assessment.begin');
  return (
    <Sheet wide>
      <PageHead title="Assessments" lead="One of each place and season: prepared by one person, checked and signed by another." />
      <p className="row list-tools">
        {mayBegin ? <><ButtonLink href="/assessments/new" kind="main">Begin an assessment</ButtonLink><ButtonLink href="/assessments/import">Begin from a file</ButtonLink></> : null}
        {all === 0 ? null : <ButtonLink href={`/assessments/list.csv?${new URLSearchParams(query).toString()}`} download="assessments.csv">Save as CSV</ButtonLink>}
      </p>
      {all === 0 ? (
        <Empty level={2} title="No assessment yet">
          <p>It asks about the room, the table, the store and what people do: about 25 minutes, the questions that may stop you first. Every page is saved, so you can stop at any time.</p>
        </Empty>
      ) : (
        <>
          <ListSearch query={query} />
          {rows.length === 0 ? <Empty level={2} title="Nothing found"><p>No assessment has these words in its title, place, season or preparer. <Link href="/assessments?state=all" prefetch={false}>Show them all</Link>.</p></Empty> : <VersionTable rows={rows} />}
        </>
      )}
    </Sheet>
  );
}
