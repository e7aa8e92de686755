import { FormChoices } from '@/app/_components/form/form-choices';
import { FormHidden, FormLine, FormNumber, FormSelect, FormText } from '@/app/_components/form/form-fields';
import { Section } from '@/app/_components/ui/section';
import { AREA_NUMBERS, type AreaNumber, type AreaPart, partsOf } from '@/lib/places/area-fields';
import { AIR_MODES, type AreaDetails, type AreaUse, DETECTORS, FUEL_LOADS, SURFACES } from '@/lib/places/place';
import { type Units, unitOf, writeMeasure } from '@/lib/places/typed-measure';
import { AIR_WORDS, AREA_USE_WORDS, DETECTOR_WORDS, FUEL_WORDS, SURFACE_WORDS } from '@/lib/places/words';

interface AreaFieldsProps {
  /** chosen before: what is asked follows from it */
  readonly use: AreaUse;
  readonly units: Units;
  readonly area?: AreaDetails;
}

/** What is asked about an area of this use. Nothing needs an answer: what nobody knows stays open and counts as not known. */
export function AreaFieldsForm({ use, units, area }: AreaFieldsProps) {
  // Outdoors is answered in the form itself, so what only a room has is asked as well and left out when it is saved.
  const parts = partsOf(use, false);
  const has = (part: AreaPart): boolean => parts.includes(part);
  return (
    <>
      <FormHidden name="units" value={units} />
      <FormHidden name="use" value={use} />
      <Section id="which" title={AREA_USE_WORDS[use]}>
        <div className="stack fields">
          <FormLine name="name" label="Name" hint="Such as Charging table, Cupboard A, Yard by the wall" value={area?.name} autoComplete="off" />
          <FormChoices name="outdoors" legend="Is it outdoors?" value={area === undefined ? undefined : area.outdoors ? 'yes' : 'no'} options={[{ value: 'no', label: 'No, in a room' }, { value: 'yes', label: 'Yes, outdoors', hint: 'Size, air and smoke alarm are then not kept' }]} />
        </div>
      </Section>
      {has('size') || has('air') ? <Section id="room" title="The room" aside="Leave open what nobody knows"><div className="stack fields">{has('size') ? <Size units={units} area={area} /> : null}{has('air') ? <Air units={units} area={area} /> : null}</div></Section> : null}
      {has('distances') || has('fuel') || has('surface') ? <Section id="around" title="Around the packs"><div className="stack fields"><Around has={has} units={units} area={area} /></div></Section> : null}
      {has('people') || has('leaving') ? <Section id="people" title="People and ways out"><div className="stack fields"><People has={has} area={area} units={units} /></div></Section> : null}
      <Section id="more" title="Anything else"><FormText name="notes" label="Notes" value={area?.notes ?? ''} rows={3} /></Section>
    </>
  );
}

type Part = Omit<AreaFieldsProps, 'use'>;

function Size(props: Part) {
  return <div className="two-up"><Measure {...props} name="lengthM" label="Length" /><Measure {...props} name="widthM" label="Width" /><Measure {...props} name="heightM" label="Height" /></div>;
}

function Air({ units, area }: Part) {
  return (
    <>
      <FormChoices name="airMode" legend="How does air get in and out?" value={area === undefined ? undefined : (area.airMode ?? '')} options={[...AIR_MODES.map((mode) => ({ value: mode, label: AIR_WORDS[mode] })), { value: '', label: 'Not sure' }]} />
      <div className="two-up">
        <Measure units={units} area={area} name="openingWidthM" label="Gap to outdoors, width" hint="When it is measured" />
        <Measure units={units} area={area} name="openingHeightM" label="Gap to outdoors, height" />
        <Measure units={units} area={area} name="airFlowM3PerH" label="Flow of the fan" hint="From its plate, when it is known" />
        <Measure units={units} area={area} name="airChangesPerHour" label="Air renewed" hint="The caretaker’s figure" />
      </div>
      <FormLine name="openings" label="Doors and windows in words" value={area?.openings ?? ''} autoComplete="off" />
    </>
  );
}

function Around({ has, units, area }: Part & { readonly has: (part: AreaPart) => boolean }) {
  return (
    <>
      {has('surface') ? <FormSelect name="surface" label="What do packs stand on?" value={area?.surface ?? ''} options={[{ value: '', label: 'Not sure' }, ...SURFACES.map((surface) => ({ value: surface, label: SURFACE_WORDS[surface] }))]} /> : null}
      {has('distances') ? <div className="two-up"><Measure units={units} area={area} name="combustibleDistanceM" label="To the nearest thing that could burn" /><Measure units={units} area={area} name="clearHeightM" label="Up to the shelf or ceiling above" /><Measure units={units} area={area} name="personDistanceM" label="To the nearest person" /></div> : null}
      {has('fuel') ? <FormSelect name="fuelLoad" label="How much could burn in the room?" value={area?.fuelLoad ?? ''} options={[{ value: '', label: 'Not sure' }, ...FUEL_LOADS.map((load) => ({ value: load, label: FUEL_WORDS[load] }))]} /> : null}
      {has('detectors') ? <FormSelect name="detectors" label="Smoke alarm" value={area?.detectors ?? ''} options={[{ value: '', label: 'Not sure' }, ...DETECTORS.map((kind) => ({ value: kind, label: DETECTOR_WORDS[kind] }))]} /> : null}
    </>
  );
}

function People({ has, units, area }: Part & { readonly has: (part: AreaPart) => boolean }) {
  const seconds = area?.evacuationS ?? null;
  return (
    <>
      {has('people') ? <Measure units={units} area={area} name="peoplePresent" label="People present, at most" /> : null}
      {has('leaving') ? <Measure units={units} area={area} name="exits" label="Ways out" hint="Doors through which people leave" /> : null}
      {has('leaving') ? (
        <div className="two-up">
          <FormNumber name="evacuationMin" label="Until everybody is out" unit="min" hint="As you timed it, with everybody. Never timed: leave both empty." value={seconds === null ? '' : String(Math.floor(seconds / 60))} />
          <FormNumber name="evacuationS" label="and" unit="s" value={seconds === null ? '' : String(Math.round(seconds % 60))} />
        </div>
      ) : null}
    </>
  );
}

function Measure({ name, label, hint, units, area }: Part & { readonly name: AreaNumber; readonly label: string; readonly hint?: string }) {
  const unit = unitOf(AREA_NUMBERS[name].quantity, units);
  return <FormNumber name={name} label={label} hint={hint} unit={unit === '' ? undefined : unit} value={writeMeasure(name, area?.[name] ?? null, units)} />;
}
