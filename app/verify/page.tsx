import type { Metadata } from 'next';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormLine, FormSubmit } from '@/app/_components/form/form-fields';
import { Frame } from '@/app/_components/ui/frame';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { statusOfNumber } from '@/lib/server/papers/check-handed-in';
import { checkFileAction, checkNumberAction } from './actions';
import { FilePart } from './file-part';
import { FileVerdictPart, NumberVerdictPart } from './verdict-part';

export const metadata: Metadata = { title: 'Check a paper' };

/** For anybody who holds a paper: whether the file is as it was signed, by whom, and whether it still holds. */
export default async function VerifyPage({ searchParams }: { readonly searchParams: Promise<{ readonly number?: string }> }) {
  const { number } = await searchParams;
  const asked = typeof number === 'string' && number.trim() !== '' ? await statusOfNumber(number) : null;
  return (
    <Frame>
      <PageHead title="Check a paper" lead="Hand in the PDF. You see whether it is as it was signed, who signed it, and whether it still holds. You need no account, and the file is not kept." />
      {asked === null ? null : <NumberVerdictPart status={asked} number={number ?? ''} />}
      <Section id="file" title="The file">
        <ActionForm action={checkFileAction} id="check-file" faultsTitle="Not checked">
          <FilePart />
          <p className="row"><FormSubmit>Check this file</FormSubmit></p>
          <FileVerdictPart />
        </ActionForm>
      </Section>
      <Section id="by-number" title="A printed copy">
        <p>Ink cannot be checked. The number at the foot of each page tells whether the paper of that number still holds; what the page itself says, it cannot tell.</p>
        <ActionForm action={checkNumberAction} id="check-number" faultsTitle="Not looked up">
          <FormLine name="number" label="Number of the paper" hint="Such as SB-7F2K-Q9XM" value={number} autoComplete="off" spellCheck={false} />
          <p className="row"><FormSubmit kind="plain">Look it up</FormSubmit></p>
        </ActionForm>
      </Section>
      <Section id="without-us" title="Without this program">
        <p>The signatures are of an open standard (PAdES). Any reader that checks PDF signatures can check the file. Give it the school’s certificate, which the safety officer hands out, so that it knows whom the school vouches for. Whether the paper was replaced or suspended since, only this page knows.</p>
      </Section>
    </Frame>
  );
}
