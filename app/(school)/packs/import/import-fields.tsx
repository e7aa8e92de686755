'use client';

import { use } from 'react';
import { FormContext, useFormField } from '@/app/_components/form/form-context';
import { FormSubmit } from '@/app/_components/form/form-fields';
import { Field } from '@/app/_components/ui/field';
import { TextArea } from '@/app/_components/ui/text-field';
import type { FormState } from '@/lib/forms/form-state';
import type { ImportPreview } from '@/lib/server/packs/import-packs';
import { PreviewParts } from './preview-parts';

/** The table as text or as a file, and under it what was read of it. */
export function ImportFields() {
  const { state } = use(FormContext);
  const preview = (state as FormState<ImportPreview>).data;
  const table = useFormField('table');
  const file = useFormField('file');
  return (
    <>
      <TextArea id={table.id} name="table" label="The table" error={table.error} rows={10} spellCheck={false} wrap="off" defaultValue={table.typed ?? preview?.text ?? ''} hint="Copied cells of a spreadsheet, or text with commas or semicolons" />
      <Field id={file.id} label="Or a file" error={file.error} hint="Ends in .csv or .txt. It is read once and not kept.">
        {(attributes) => <input {...attributes} type="file" name="file" accept=".csv,.txt,text/csv,text/plain" className="input" />}
      </Field>
      <p className="row"><FormSubmit kind={preview === undefined ? 'main' : 'outline'}>{preview === undefined ? 'Read it' : 'Read it again'}</FormSubmit></p>
      {preview === undefined ? null : <PreviewParts preview={preview} />}
    </>
  );
}
