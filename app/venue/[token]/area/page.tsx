import type { Metadata } from 'next';
import Link from 'next/link';
import { AreaFieldsForm } from '@/app/(school)/places/_parts/area-fields-form';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Frame } from '@/app/_components/ui/frame';
import { Icon } from '@/app/_components/ui/icon';
import { PageHead } from '@/app/_components/ui/page-head';
import { AREA_USES } from '@/lib/places/place';
import { openVenueLink } from '@/lib/server/events/venue-page';
import { describeAreaAction } from '../actions';

export const metadata: Metadata = { title: 'A room or spot of your venue', robots: { index: false, follow: false }, referrer: 'no-referrer' };

interface PageProps { readonly params: Promise<{ readonly token: string }>; readonly searchParams: Promise<{ readonly area?: string | string[]; readonly use?: string | string[] }> }

/** One room or spot of the venue, described by its own staff. */
export default async function DescribeAreaPage({ params, searchParams }: PageProps) {
  const [{ token }, asked] = [await params, await searchParams];
  const opened = await openVenueLink(token);
  if (!opened.ok) return <Frame><PageHead title="This link does not work" lead={opened.reason} /></Frame>;
  const { site, school, link } = opened.page;
  const area = site.areas.find(({ id }) => id === asked.area);
  const use = area?.use ?? AREA_USES.find((one) => one === asked.use) ?? 'charging';
  return (
    <Frame>
      <PageHead crumb={<Link href={`/venue/${encodeURIComponent(token)}`} prefetch={false}><Icon name="left" />{site.name}</Link>} title={area === undefined ? 'Describe a room or spot' : area.name} lead="Leave open what nobody knows." />
      <ActionForm action={describeAreaAction} id="area" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="token" value={token} />
        {area === undefined ? null : <FormHidden name="areaId" value={area.id} />}
        <FormHidden name="revision" value={String(area?.revision ?? 0)} />
        <AreaFieldsForm use={use} units={school.units} area={area} />
        <FormLine name="byName" label="Your name and post" value={link.answeredByName ?? ''} autoComplete="name" maxLength={100} />
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </Frame>
  );
}
