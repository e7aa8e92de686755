import type { Metadata } from 'next';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { ButtonLink } from '@/app/_components/ui/button';
import { Frame } from '@/app/_components/ui/frame';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { VerdictNotice } from '@/app/verify/verdict-notice';
import { openSharedFile } from '@/lib/server/events/shared-file';

export const metadata: Metadata = { title: 'File for the venue', robots: { index: false, follow: false }, referrer: 'no-referrer' };

/** One file for somebody without an account: what it says, whether it still holds, and nothing else. */
export default async function SharedFilePage({ params }: { readonly params: Promise<{ readonly token: string }> }) {
  const { token } = await params;
  const opened = await openSharedFile(token);
  if (!opened.ok) return <Frame><PageHead title="This link does not work" lead={opened.reason} /></Frame>;
  const { shared: { school, title, number, standing, checkedAt, until, signatures, paper } } = opened;
  await opened.count();
  return (
    <Frame margin={<MarginNote title="This link">{`It works until ${until}. Whoever has it sees this file. Look again on the day: the school may have changed something.`}</MarginNote>}>
      <PageHead crumb={school} title={title} />
      <VerdictNotice tone={standing.tone} heading={standing.heading} about={`${number}, looked up ${checkedAt}`}>
        <p>{standing.sentence}</p>
        <ul className="verdict-lines">{signatures.map((words) => <li key={words}><span>Signed by {words}</span></li>)}</ul>
      </VerdictNotice>
      {paper === null ? null : (
        <>
          <p className="row after"><ButtonLink kind="main" href={`/share/${encodeURIComponent(token)}/file`} download={`${number}.pdf`}>Save the file (PDF)</ButtonLink><ButtonLink href={`/verify?number=${number}`}>Check a file</ButtonLink></p>
          <PaperSheet paper={paper} label="The file" />
        </>
      )}
    </Frame>
  );
}
