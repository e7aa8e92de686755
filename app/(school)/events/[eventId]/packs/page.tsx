import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { FormTicks } from '@/app/_components/form/form-choices';
import { FormHidden, FormSubmit, FormText } from '@/app/_components/form/form-fields';
import { Empty } from '@/app/_components/ui/empty';
import { Finder } from '@/app/_components/ui/finder';
import { readPackFilter } from '@/lib/packs/pack-list';
import { stateWords } from '@/lib/packs/states/pack-states';
import { requireMay } from '@/lib/server/actor';
import { eventView } from '@/lib/server/events/event-view';
import { packsToChoose } from '@/lib/server/events/read-events';
import { isReady } from '@/lib/server/events/choosable-packs';
import { EditFrame } from '../_parts/edit-frame';
import { PacksForm } from './packs-form';

export const metadata: Metadata = { title: 'Packs that go along' };

interface PageProps { readonly params: Promise<{ readonly eventId: string }>; readonly searchParams: Promise<{ readonly find?: string | string[] }> }

/** Read one by one with the camera, ticked in the register, typed by label, or all that are ready of what a filter shows. */
export default async function EventPacksPage({ params, searchParams }: PageProps) {
  const actor = await requireMay('event.change');
  const [{ eventId }, query] = [await params, await searchParams];
  const view = await eventView(actor, eventId);
  if (view === null) notFound();
  const { event, limits, now } = view;
  const filter = readPackFilter(query);
  const offered = await packsToChoose(actor, filter, event.packIds, now);
  const ready = offered.filter((listed) => isReady(limits, listed)).length;
  return (
    <EditFrame view={view} title="Packs that go along" lead={`${event.packIds.length === 1 ? 'One is' : `${event.packIds.length} are`} chosen.`} note={{ title: 'Ready', words: 'In use, checked, and nothing in its last check stops it from being taken along. Damaged packs stay home.' }}>
      <Finder action={`/events/${eventId}/packs`} name="find" words={filter.find} placeholder="label, batch, maker, place" />
      <PacksForm eventId={event.id} revision={event.revision}>
        {offered.map(({ pack }) => <FormHidden key={pack.id} name="shown" value={pack.id} />)}
        {offered.length === 0 ? <NoPack all={`/events/${eventId}/packs`} isSearched={filter.find !== ''} /> : (
          <div className="pack-picks event-picks">
            <FormTicks name="packs" legend={filter.find === '' ? 'From the register' : `Of what is shown for “${filter.find}”`} values={event.packIds} options={offered.map((listed) => ({ value: listed.pack.id, label: listed.pack.label, hint: isReady(limits, listed) ? undefined : why(listed.pack.state) }))} />
          </div>
        )}
        <FormText name="typed" label="By label" hint="Type labels, or scan their square codes into this box: one a line, or parted by commas" rows={2} autoComplete="off" />
        <p className="row">
          <FormSubmit>Save these</FormSubmit>
          {ready === 0 ? null : <FormSubmit kind="outline" name="also" value="ready">{ready === 1 ? 'Save, with the one that is ready' : `Save, with all ${ready} that are ready`}</FormSubmit>}
        </p>
      </PacksForm>
    </EditFrame>
  );
}

function NoPack({ all, isSearched }: { readonly all: string; readonly isSearched: boolean }) {
  if (isSearched) return <p>No pack is like that. <Link href={all} prefetch={false}>Show all</Link></p>;
  return <Empty level={2} title="No pack to take along"><p>The <Link href="/packs" prefetch={false}>register</Link> has none that is here. An organiser adds them there first.</p></Empty>;
}

function why(state: Parameters<typeof stateWords>[0]): string {
  return state === 'in-use' ? 'not ready: look at its last check' : stateWords(state);
}
