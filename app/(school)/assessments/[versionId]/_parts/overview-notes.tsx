import Link from 'next/link';
import { MarginNote } from '@/app/_components/ui/margin-note';
import type { OpenVersion } from '@/lib/server/assessments/open-version';
import { stateInFull } from '@/lib/server/assessments/list';
import type { Overview } from '@/lib/server/assessments/overview';

/** Beside the overview: who prepares it, the visit, the settings, the file, other versions. */
export function OverviewNotes({ open: { version, closed }, overview: { others } }: { readonly open: OpenVersion; readonly overview: Overview }) {
  const here = `/assessments/${version.id}`;
  const { visited, visitedOn, scope } = version;
  return (
    <>
      <MarginNote title="Who">Prepared by {version.preparedByName}.</MarginNote>
      <MarginNote title="Seen on site">
        <p>{visited === null ? 'Nobody has said yet whether somebody has been there.' : visited ? `Visited${visitedOn === null ? '' : ` on ${visitedOn}`}${scope.visitedBy === '' ? '' : ` by ${scope.visitedBy}`}.` : 'Not visited: everything was taken on trust.'}</p>
        {closed === null ? <p><Link href={`${here}/scope`} prefetch={false}>Visit, matrix and effort</Link></p> : null}
      </MarginNote>
      <MarginNote title="As a file"><p><a href={`${here}/document`} download>Save the document</a>. The command gives the same figures for it.</p></MarginNote>
      {others.length === 0 ? null : (
        <MarginNote title="Other versions"><ul>{others.map((one) => <li key={one.id}><Link href={`/assessments/${one.id}`} prefetch={false}>Version {one.number}</Link>, {stateInFull(one)}</li>)}</ul></MarginNote>
      )}
    </>
  );
}
