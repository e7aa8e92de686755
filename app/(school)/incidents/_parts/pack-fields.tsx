import { FormTicks } from '@/app/_components/form/form-choices';
import { FormLine } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import type { Typed } from '@/lib/forms/form-state';
import { all, one } from './typed';

interface PackFieldsProps { readonly typed: Typed; readonly labels: readonly string[] }

/** Packs by their labels: typed, or picked out of the register. */
export function PackFields({ typed, labels }: PackFieldsProps) {
  return (
    <div className="stack whole">
      <PackField name="involved" label="Packs that took part" hint="Labels, parted by commas. Not sure whether it took part? Then it belongs here." typed={typed} labels={labels} />
      <PackField name="nearby" label="Packs that only lay near" hint="The safety officer may release these later." typed={typed} labels={labels} />
      <div className="notice"><p>All of them are marked isolated in the register the moment you save. The packs themselves do not move, and nobody needs to go and look.</p></div>
    </div>
  );
}

function PackField({ name, label, hint, typed, labels }: PackFieldsProps & { readonly name: 'involved' | 'nearby'; readonly label: string; readonly hint: string }) {
  return (
    <div className="stack whole">
      <FormLine name={`${name}Typed`} label={label} hint={hint} autoComplete="off" spellCheck={false} value={one(typed, `${name}Typed`)} />
      {labels.length === 0 ? null : (
        <Disclosure summary={`Pick from the register (${labels.length})`}>
          <div className="pack-picks"><FormTicks name={name} legend={label} values={all(typed, name)} options={labels.map((value) => ({ value, label: value }))} /></div>
        </Disclosure>
      )}
    </div>
  );
}
