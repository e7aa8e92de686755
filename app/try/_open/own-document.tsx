'use client';

import { useState } from 'react';
import { Button } from '@/app/_components/ui/button';
import { ErrorSummary } from '@/app/_components/ui/error-summary';
import { FileDrop } from '@/app/_components/ui/file-drop';
import { TextArea } from '@/app/_components/ui/text-field';
import { currentContent } from '@/lib/content/editions';
import { type DocumentFault, faultInWords } from '@/lib/interchange/json/fault';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { wholeFrom, type WholeDocument } from '../_state/whole-document';

interface OwnDocumentProps { readonly onOpen: (whole: WholeDocument, name: string) => void }

/** Faults of one attempt; the text stays in the box, to be put right there. */
interface Refusal { readonly attempt: number; readonly faults: readonly DocumentFault[] }

const NO_FILE = 'pasted text';

/** A document of one's own: chosen, dropped or pasted, read in this browser and nowhere else. */
export function OwnDocument({ onOpen }: OwnDocumentProps) {
  const [text, setText] = useState('');
  const [name, setName] = useState(NO_FILE);
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const [fileError, setFileError] = useState<string | undefined>(undefined);

  const read = (candidate: string, from: string): void => {
    const outcome = readAssessment(candidate, currentContent);
    setRefusal(outcome.ok ? null : { attempt: (refusal?.attempt ?? 0) + 1, faults: outcome.faults });
    if (outcome.ok) onOpen(wholeFrom(candidate), from);
  };
  const takeFile = (file: File): void => {
    setFileError(undefined);
    file.text().then((content) => { setText(content); setName(file.name); read(content, file.name); })
      .catch((error: unknown) => setFileError(`${file.name} cannot be read: ${error instanceof Error ? error.message : String(error)}`));
  };

  return (
    <div className="stack own">
      {refusal === null ? null : <ErrorSummary title={faultTitle(refusal.faults.length)} attempt={refusal.attempt} faults={refusal.faults.map((fault) => ({ field: 'own-text', message: faultInWords(fault) }))} />}
      <FileDrop id="own-file" label="Drop a document here" accept=".json,application/json" error={fileError} hint="A sandbucket-assessment.v1 file. It is read in this browser; nothing of it is sent anywhere." onFile={takeFile} />
      <TextArea id="own-text" label="Or paste its text" rows={8} spellCheck={false} autoComplete="off" value={text} hint="What you paste stays here until it can be read; nothing of it is changed." onChange={(event) => { setText(event.currentTarget.value); setName(NO_FILE); }} />
      <Button onClick={() => read(text, name)}>Read it</Button>
    </div>
  );
}

function faultTitle(count: number): string {
  return count === 1 ? 'One thing is wrong, so nothing is worked out' : `${count} things are wrong, so nothing is worked out`;
}
