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
          <FileVerdictPart />
          <FilePart />
          <p className="row"><FormSubmit>Check this file</FormSubmit></p>
        </ActionForm>
      </Section>
      <Section id="by-number" title="A printed copy">
        <p>Ink cannot be checked. The number at the foot of each page tells whether the paper of that number still holds; what the page itself says, it cannot tell.</p>
        <ActionForm action={checkNumberAction} id="check-number" faultsTitle="Not looked up">
          <FormLine name="number" label="Number of the paper" hint="Such as SB-7F2K-Q9XM" value={number} autoComplete="off" spellCheck={false} />
          <p className="row"><FormSubmit kind="plain">Look it up</FormSubmit></p>
        </ActionForm>
      </Section>
      <Section id="not-told" title="What this does not tell you">
        <p>That a file is unchanged does not make what it says right. It shows who stands behind it. If something in the room looks different from the paper, talk to the school’s safety officer before anybody charges there.</p>
      </Section>
      <Section id="without-us" title="Without this program">
        <p>The signatures are of an open standard (PAdES). Any program that checks PDF signatures can check the file. Give it the school’s certificate, so that it knows whom the school vouches for: it is offered above once a file was checked, and the school can tell you its fingerprint by another way. Whether the paper was replaced or suspended since, only this page knows, and only online.</p>
      </Section>
    </Frame>
  );
}
