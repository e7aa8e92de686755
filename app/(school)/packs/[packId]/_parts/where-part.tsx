import { ActionForm } from '@/app/_components/form/action-form';
import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { mustBeIsolatedNow, type PackHistory, placeOfIsolated } from '@/lib/packs/pack-history';
import { PACK_LIMITS } from '@/lib/server/packs/pack-limits';
import { type DateStyle, momentWords } from '@/lib/wording/dates';
import { sayWhereAction } from '../actions';

interface WherePartProps { readonly history: PackHistory; readonly style: DateStyle }

/** Where an isolated pack is. The register has moved nothing: somebody says it. */
export function WherePart({ history, style }: WherePartProps) {
  if (mustBeIsolatedNow(history)) {
    return <Section id="where" title="Where is it now?"><p>{PACK_LIMITS.check?.isolation.words}</p><WhereForm packId={history.pack.id} /></Section>;
  }
  const place = placeOfIsolated(history);
  return (
    <Section id="where" title="Where it is" aside={place === null ? undefined : momentWords(place.at, style)}>
      {place === null ? null : <p><strong>{labelOf(place.placeNow)}</strong>{place.placeNote === null ? '' : `, ${place.placeNote}`}. {sandWords(place.inSand)}</p>}
      <Disclosure summary="It lies somewhere else now"><WhereForm packId={history.pack.id} /></Disclosure>
    </Section>
  );
}

function WhereForm({ packId }: { readonly packId: string }) {
  const places = PACK_LIMITS.check?.isolation.places ?? [];
  return (
    <ActionForm action={sayWhereAction} id="where-form" faultsTitle="Not saved yet. Look at this again">
      <FormHidden name="packId" value={packId} />
      <FormChoices name="placeNow" legend="The pack itself is" options={places.map(({ id, label }) => ({ value: id, label }))} />
      <FormChoices name="inSand" legend="Does it lie in dry sand?" options={[{ value: 'yes', label: 'Yes' }, { value: 'no', label: 'No' }, { value: 'not sure', label: 'Not sure' }]} />
      <FormLine name="placeNote" label="More about the place" hint="Who keeps the key, which side of the yard" autoComplete="off" />
      <p className="small muted">Say what is so. Nobody needs to go and look.</p>
      <p className="row"><FormSubmit>Save where it is</FormSubmit></p>
    </ActionForm>
  );
}

function labelOf(place: string | null): string {
  return PACK_LIMITS.check?.isolation.places.find(({ id }) => id === place)?.label ?? 'Nobody has said';
}

function sandWords(inSand: boolean | null): string {
  if (inSand === null) return 'Nobody is sure whether in dry sand.';
  return inSand ? 'In dry sand.' : 'Not in dry sand.';
}
