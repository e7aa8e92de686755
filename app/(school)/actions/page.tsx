import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionTable } from '@/app/_components/actions/action-table';
import { ButtonLink } from '@/app/_components/ui/button';
import { Empty } from '@/app/_components/ui/empty';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { ActionQuerySchema } from '@/lib/assessments/action-input';
import { requireMay } from '@/lib/server/actor';
import { actionList } from '@/lib/server/actions/read-actions';
import { currentSchool } from '@/lib/server/people/current-school';
import { ActionSearch } from './_parts/action-search';

export const metadata: Metadata = { title: 'Actions' };

interface PageProps { readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }

/** Everything the school has agreed to do, the earliest first. */
export default async function ActionsPage({ searchParams }: PageProps) {
  const actor = await requireMay('action.read');
  const query = ActionQuerySchema.parse(await searchParams);
  const [{ rows, all, overdue, today }, school] = [await actionList(actor, query), await currentSchool(actor)];
  return (
    <Sheet wide>
      <PageHead title={titleOf(overdue)} lead="What was agreed out of an assessment or an incident: by whom, by when, and what became of it." />
      {all === 0 ? <Empty level={2} title="No action yet"><p>Actions are made on the result of an assessment, out of a stop condition or a suggestion.</p></Empty> : (
        <>
          <p className="row list-tools"><ButtonLink href={`/actions/list.csv?${new URLSearchParams(query).toString()}`} download="actions.csv">Save as CSV</ButtonLink></p>
          <ActionSearch query={query} />
          {rows.length === 0 ? <Empty level={2} title="Nothing found"><p>No action is like that. <Link href="/actions?state=all" prefetch={false}>Show them all</Link>.</p></Empty> : <ActionTable actions={rows} today={today} style={school} withOf />}
        </>
      )}
    </Sheet>
  );
}

function titleOf(overdue: number): string {
  if (overdue === 0) return 'Actions';
  return overdue === 1 ? 'Actions, one overdue' : `Actions, ${overdue} overdue`;
}
