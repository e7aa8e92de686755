import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { labelSeries } from '@/lib/packs/label-series';
import type { Pack } from '@/lib/packs/pack';
import { copyPackAction } from '../actions';

/** Enters more of the same kind; their labels go on from this one. */
export function CopyPart({ pack }: { readonly pack: Pack }) {
  const next = labelSeries(pack.label, 2, []);
  return (
    <Section id="copy" title="More of this kind">
      <Disclosure summary="Copy it">
        <ActionForm action={copyPackAction} id="copy-pack" faultsTitle="Nothing copied yet">
          <FormHidden name="packId" value={pack.id} />
          <FormNumber name="copies" label="How many more" hint={next.ok ? `Their labels go on: ${next.value.join(', ')} … Labels that are taken are left out.` : undefined} />
          <p className="row"><FormSubmit kind="outline">Copy it</FormSubmit></p>
        </ActionForm>
      </Disclosure>
    </Section>
  );
}
