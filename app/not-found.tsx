import type { Metadata } from 'next';
import { ButtonLink } from './_components/ui/button';
import { Frame } from './_components/ui/frame';
import { PageHead } from './_components/ui/page-head';

export const metadata: Metadata = { title: 'No such page' };

export default function NotFound() {
  return (
    <Frame>
      <PageHead title="There is no page at this address." lead="It may have moved, or the address has a letter too many." />
      <div className="actions">
        <ButtonLink href="/try" kind="main">Go to your room</ButtonLink>
      </div>
    </Frame>
  );
}
