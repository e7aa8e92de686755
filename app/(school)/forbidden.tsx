import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';

/** Shown, with status 403, to somebody signed in whose role does not go so far. */
export default function Forbidden() {
  return (
    <Sheet>
      <PageHead title="Your role does not go so far" lead="You are signed in, but this page is for other roles. Your safety officer can change what you may do." />
      <div className="actions"><ButtonLink href="/today" kind="main">Go to Today</ButtonLink></div>
    </Sheet>
  );
}
