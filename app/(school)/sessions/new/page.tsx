import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import { FormSegment } from '@/app/_components/form/form-segment';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Empty } from '@/app/_components/ui/empty';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Sheet } from '@/app/_components/ui/sheet';
import { requireMay } from '@/lib/server/actor';
import { placesForSession } from '@/lib/server/sessions/read-sessions';
import { OPENING_POINTS } from '@/lib/sessions/check-points';
import { POINT_OPTIONS } from '../_parts/point-options';
import { openSessionAction } from './actions';

export const metadata: Metadata = { title: 'Opening check' };

/** The look round before anybody charges or flies. */
export default async function NewSessionPage() {
  const actor = await requireMay('session.log');
  const places = await placesForSession(actor);
  const free = places.filter(({ openId }) => openId === null);
  return (
    <Sheet margin={<MarginNote title="When something is not so">Say it as it is. The check is kept, nobody charges or flies, and you make it again when it is put right.</MarginNote>} marginLabel="About the check">
      <PageHead crumb={<Link href="/sessions" prefetch={false}>Sessions</Link>} title="Opening check" lead="Before anybody charges or flies. About a minute." />
      {places.filter(({ openId }) => openId !== null).map(({ openId, name }) => <p key={openId}>A session is open in {name}: <Link href={`/sessions/${openId ?? ''}`} prefetch={false}>go on with it</Link>.</p>)}
      {places.length === 0 ? <Empty level={2} title="No place yet"><p>A session is held somewhere: <Link href="/places" prefetch={false}>describe your place</Link> first.</p></Empty> : null}
      {free.length === 0 ? null : (
        <ActionForm action={openSessionAction} faultsTitle="Not saved yet">
          {free.length === 1 ? <FormHidden name="siteId" value={free[0]?.id ?? ''} /> : <FormChoices name="siteId" legend="Where" options={free.map(({ id, name }) => ({ value: id, label: name }))} />}
          {OPENING_POINTS.map(({ id, ask }) => <FormSegment key={id} name={id} legend={ask} options={POINT_OPTIONS} />)}
          <FormNumber name="peoplePresent" label="People in the room, you included" unit="people" hint="Leave it empty when you have not counted" />
          <FormLine name="note" label="Note" hint="What is not so, and who sees to it" />
          <Disclosure summary="It began earlier"><FormLine name="startedAt" label="Began" type="datetime-local" hint="Left empty it is now. At most 14 days back" /></Disclosure>
          <FormSubmit>Save the check</FormSubmit>
        </ActionForm>
      )}
    </Sheet>
  );
}
