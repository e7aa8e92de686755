'use client';

import { use, useEffect, useRef } from 'react';
import { FormContext } from '@/app/_components/form/form-context';
import { Icon } from '@/app/_components/ui/icon';
import type { CheckedFile, NumberStatus } from '@/lib/server/papers/check-handed-in';
import { VerdictNotice } from './verdict-notice';

/** What came out for the file that was handed in last. It takes the focus: it is what was asked for. */
export function FileVerdictPart() {
  const { state } = use(FormContext);
  const checked = state.data as CheckedFile | undefined;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => { heading.current?.focus(); }, [state.attempt]);
  if (checked === undefined) return null;
  const { verdict, paper, signatures, fingerprint, certificates } = checked;
  return (
    <VerdictNotice tone={verdict.tone} heading={verdict.heading} headingRef={heading} about={`${checked.fileName}, checked ${checked.checkedAt}`}>
      {verdict.sentences.map((sentence) => <p key={sentence}>{sentence}</p>)}
      <ul className="verdict-lines">
        {signatures.map(({ words, holds }) => <li key={words} className={holds ? 'holds' : 'fails'}><Icon name={holds ? 'check' : 'bang'} /><span><span className="vh">{holds ? 'Holds: ' : 'Does not hold: '}</span>{words}</span></li>)}
        {paper === null ? null : <li><Icon name="assessments" /><span><b>{paper.number}</b>, {paper.title}. {paper.school}.</span></li>}
      </ul>
      {fingerprint === '' ? null : <p className="small muted">Fingerprint of the file (SHA-256): <span className="wrap-anywhere">{fingerprint}</span></p>}
      {certificates.map((one) => <p key={one} className="small">Certificate of the school: <a href={`/verify/certificate/${one}.pem`} download>PEM</a>, <a href={`/verify/certificate/${one}.der`} download>DER</a> <span className="muted wrap-anywhere">(SHA-256 {one})</span></p>)}
    </VerdictNotice>
  );
}

/** What the records say of a number. */
export function NumberVerdictPart({ status, number }: { readonly status: NumberStatus; readonly number: string }) {
  return (
    <VerdictNotice tone={status.tone} heading={status.heading} about={`${number.toUpperCase()}, looked up ${status.checkedAt}`}>
      {status.school === '' ? null : <p>{status.school}</p>}
      <p>{status.sentence}</p>
    </VerdictNotice>
  );
}
