'use client';

import { use } from 'react';
import { FormContext } from '@/app/_components/form/form-context';
import type { CheckedFile, NumberStatus } from '@/lib/server/papers/check-handed-in';
import { VerdictNotice } from './verdict-notice';

/** What came out for the file that was handed in last. */
export function FileVerdictPart() {
  const { state } = use(FormContext);
  const checked = state.data as CheckedFile | undefined;
  if (checked === undefined) return null;
  return (
    <VerdictNotice tone={checked.verdict.tone} heading={checked.verdict.heading}>
      {checked.verdict.sentences.map((sentence) => <p key={sentence}>{sentence}</p>)}
      {checked.paper === null ? null : <p><b>{checked.paper.number}</b>, {checked.paper.title}. {checked.paper.school}.</p>}
      {checked.signatures.length === 0 ? null : <ul className="plain-list">{checked.signatures.map((signature) => <li key={signature}>{signature}</li>)}</ul>}
      {checked.fingerprint === '' ? null : <p className="small muted">Fingerprint of the file (SHA-256): <span className="wrap-anywhere">{checked.fingerprint}</span></p>}
    </VerdictNotice>
  );
}

/** What the records say of a number. */
export function NumberVerdictPart({ status, number }: { readonly status: NumberStatus; readonly number: string }) {
  return (
    <VerdictNotice tone={status.tone} heading={status.heading}>
      <p><b>{number.toUpperCase()}</b>{status.school === '' ? null : `, ${status.school}`}</p>
      <p>{status.sentence}</p>
    </VerdictNotice>
  );
}
