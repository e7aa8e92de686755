import type { ReactNode } from 'react';
import type { FormAction } from '@/lib/forms/form-state';
import type { Paper } from '@/lib/papers/paper';
import { ActionForm } from '../form/action-form';
import { FormTicks } from '../form/form-choices';
import { FormHidden, FormPassword, FormSubmit } from '../form/form-fields';
import { FormWaiting } from '../form/form-waiting';
import { ButtonLink } from '../ui/button';
import { Section } from '../ui/section';
import { PaperSheet } from './paper-sheet';

interface ReadAndSignProps {
  readonly paper: Paper;
  /** names the paper as a region */
  readonly label: string;
  /** the file that is signed, where it is made already */
  readonly file?: { readonly href: `/${string}`; readonly number: string };
  /** before the form, such as what still stands in the way */
  readonly notice?: ReactNode;
  readonly action: FormAction<undefined>;
  readonly id: string;
  readonly faultsTitle?: string;
  /** what the form carries along, by name */
  readonly carries: Readonly<Record<string, string>>;
  /** what a signature says, in words; ticked where it is given as `agree` */
  readonly says?: string;
  readonly agree?: string;
  readonly submit?: string;
  /** beside the button: what else may be done */
  readonly instead?: ReactNode;
  readonly waiting: string;
}

/** Whoever signs reads the paper first, whole, and gives the password below it. The same for every paper and both signers. */
export function ReadAndSign({ paper, label, file, notice, action, id, faultsTitle = 'Not signed yet', carries, says, agree, submit = 'Sign it', instead, waiting }: ReadAndSignProps) {
  return (
    <>
      <Section id="the-paper" title="What you sign" aside={<a href="#sign">To the signature</a>}>
        {file === undefined ? null : <p className="row"><ButtonLink href={file.href}>The file itself (PDF), {file.number}</ButtonLink></p>}
        <PaperSheet paper={paper} label={label} />
      </Section>
      <Section id="sign" title="Your signature">
        {notice}
        <ActionForm action={action} id={id} faultsTitle={faultsTitle}>
          {Object.entries(carries).map(([name, value]) => <FormHidden key={name} name={name} value={value} />)}
          {says === undefined ? null : <p>{says}</p>}
          {agree === undefined ? null : <FormTicks name="read" legend="Before you sign" options={[{ value: 'yes', label: agree }]} />}
          <FormPassword name="password" label="Your password" hint="Asked again, because it opens the key you sign with" autoComplete="current-password" />
          <p className="row"><FormSubmit>{submit}</FormSubmit>{instead}</p>
          <FormWaiting words={waiting} />
        </ActionForm>
      </Section>
    </>
  );
}
