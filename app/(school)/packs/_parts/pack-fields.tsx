import { FormChoices } from '@/app/_components/form/form-choices';
import { FormLine, FormNumber, FormSelect, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import type { CellTypeFacts } from '@/lib/packs/cell-types';
import type { PackDetails } from '@/lib/packs/pack';
import type { AreaChoice } from '@/lib/server/packs/pack-places';
import { FiguresAsTyped } from './figures-as-typed';

interface PackFieldsProps {
  readonly pack?: PackDetails;
  readonly cellTypes: readonly CellTypeFacts[];
  readonly areas: readonly AreaChoice[];
}

/** Everything that is asked about a pack: what its label says first, with what follows from it as it is typed. */
export function PackFields({ pack, cellTypes, areas }: PackFieldsProps) {
  return (
    <>
      <Section id="label-part" title="On its label"><LabelFields pack={pack} cellTypes={cellTypes} /></Section>
      <Section id="origin-part" title="Where it comes from"><OriginFields pack={pack} /></Section>
      <Section id="place-part" title="Where it lies">
        <div className="stack fields">
          {areas.length === 0 ? null : <FormSelect name="areaId" label="Area" value={pack?.areaId ?? ''} options={[{ value: '', label: 'Not said' }, ...areas.map(({ id, name }) => ({ value: id, label: name }))]} />}
          <FormLine name="place" label="Shelf, case or spot" value={pack?.place ?? ''} autoComplete="off" />
          <FormText name="notes" label="Notes" value={pack?.notes ?? ''} rows={3} />
        </div>
      </Section>
    </>
  );
}

function LabelFields({ pack, cellTypes }: Omit<PackFieldsProps, 'areas'>) {
  return (
    <div className="stack fields">
      <FormLine name="label" label="Label" hint="Written on the pack, such as W-11. Each label stands for one pack for ever." value={pack?.label} autoComplete="off" spellCheck={false} />
      <div className="two-up">
        <FormNumber name="series" label="Cells in series" hint="4 when the label says 4S" value={asText(pack?.series)} />
        <FormNumber name="parallel" label="Cells side by side" hint="Leave empty when the label says no P, or 1P" value={pack?.parallel === 1 ? '' : asText(pack?.parallel)} />
        <FormNumber name="capacityMah" label="Capacity" unit="mAh" value={asText(pack?.capacityMah)} />
        <FormNumber name="printedWh" label="Energy, if it is printed" unit="Wh" hint="Leave empty when it is not there" value={asText(pack?.printedWh)} />
      </div>
      <FormChoices name="cellType" legend="Full voltage of a cell" hint="From the label. A pack charged past it can catch fire, so a pack without it is not charged until somebody has found out." value={pack?.cellType} options={cellTypes.map(({ id, label, caution }) => ({ value: id, label, hint: caution ?? undefined }))} />
      <FiguresAsTyped cellTypes={cellTypes} />
      <div className="two-up">
        <FormNumber name="cRating" label="Discharge rating" unit="C" hint="The number before C" value={asText(pack?.cRating)} />
        <FormLine name="connector" label="Connector" value={pack?.connector ?? ''} autoComplete="off" />
      </div>
    </div>
  );
}

function OriginFields({ pack }: { readonly pack?: PackDetails }) {
  const secondHand = pack === undefined ? undefined : pack.secondHand === null ? 'not sure' : pack.secondHand ? 'yes' : 'no';
  return (
    <div className="stack fields">
      <FormChoices name="secondHand" legend="Is it second-hand, a gift or self-made?" value={secondHand} options={[{ value: 'no', label: 'No, bought new' }, { value: 'yes', label: 'Yes' }, { value: 'not sure', label: 'Not sure', hint: 'Counts as yes until somebody knows' }]} />
      <div className="two-up">
        <FormLine name="maker" label="Maker" value={pack?.maker ?? ''} autoComplete="off" />
        <FormLine name="seller" label="Seller" value={pack?.seller ?? ''} autoComplete="off" />
        <FormLine name="batch" label="Batch" hint="A word of your own for packs bought together" value={pack?.batch ?? ''} autoComplete="off" />
        <FormNumber name="chargesBefore" label="Charges before it was entered here" hint="Leave empty when nobody knows" value={asText(pack?.chargesBefore)} />
        <FormLine name="boughtOn" label="Bought on" type="date" value={pack?.boughtOn ?? ''} />
        <FormLine name="firstUsedOn" label="First used on" type="date" value={pack?.firstUsedOn ?? ''} />
      </div>
    </div>
  );
}

function asText(value: number | null | undefined): string | undefined {
  return value === null || value === undefined ? undefined : String(value);
}
