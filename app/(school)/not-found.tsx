import { ButtonLink } from '@/app/_components/ui/button';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';

/** Also what another school's things are to this one: nothing at this address. */
export default function NotInThisSchool() {
  return (
    <Sheet>
      <PageHead title="There is nothing at this address in your school." lead="It may have been put away, or it belongs to another school you work at: look at which school you are in." />
      <div className="actions"><ButtonLink href="/today" kind="main">Go to Today</ButtonLink></div>
    </Sheet>
  );
}
