'use client';

import { memo, useState } from 'react';
import { Button } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import { currentContent } from '@/lib/content/editions';
import type { OpenDocument } from '../_state/page-state';
import { textOf } from '../_state/whole-document';
import { documentToSave } from './document-to-save';
import { commandFor, fileNameOf } from './file-name';
import { saveDocument } from './save-document';

/** The document as a file, and the command that gives the same numbers. */
export const KeepPart = memo(function KeepPart({ open }: { readonly open: OpenDocument }) {
  const [said, setSaid] = useState('');
  const command = commandFor(open);
  const copy = (): void => {
    navigator.clipboard.writeText(command).then(() => setSaid('Copied.'), () => setSaid('This browser does not let a page copy. Select the line and copy it.'));
  };
  return (
    <Section id="keep" title="Keep it">
      <p>The page forgets the room when you close this tab. The file holds everything, also what the calculation does not read. It names the content it was answered with: edition {currentContent.edition ?? 1}, version {currentContent.version}.</p>
      <div className="row after">
        <Button onClick={() => saveDocument(textOf(documentToSave(open)), fileNameOf(open))}>Download the document</Button>
      </div>
      <p className="after">The same numbers from the command line{open.edited || open.source.kind === 'own' ? ', with the file you downloaded' : ''}:</p>
      <div className="row command">
        <code className="scroll" tabIndex={0}>{command}</code>
        <Button size="small" onClick={copy}>Copy</Button>
        <span role="status" className="small muted">{said}</span>
      </div>
    </Section>
  );
});
