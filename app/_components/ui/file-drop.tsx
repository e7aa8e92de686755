'use client';

import { type DragEvent, type ReactNode, useRef, useState } from 'react';
import { Button } from './button';
import { Icon } from './icon';

interface FileDropProps {
  readonly id: string;
  readonly label: string;
  /** what happens with the file, in words */
  readonly hint: ReactNode;
  /** as the input's accept, e.g. ".json,application/json" */
  readonly accept: string;
  readonly error?: string;
  readonly onFile: (file: File) => void;
}

/** A file, dropped or chosen. The button is the way for keyboard and touch; dropping is a short cut. */
export function FileDrop({ id, label, hint, accept, error, onFile }: FileDropProps) {
  const [over, setOver] = useState(false);
  const input = useRef<HTMLInputElement>(null);
  const take = (files: FileList | null): void => { const file = files?.[0]; if (file !== undefined) onFile(file); };
  const drop = (event: DragEvent): void => { event.preventDefault(); setOver(false); take(event.dataTransfer.files); };
  return (
    <div className={error === undefined ? 'field' : 'field bad'}>
      <div className={over ? 'drop over' : 'drop'} onDragOver={(event) => { event.preventDefault(); setOver(true); }} onDragLeave={() => setOver(false)} onDrop={drop}>
        <label htmlFor={id}>{over ? 'Let go to read it' : label}</label>
        <input id={id} ref={input} className="vh" type="file" tabIndex={-1} accept={accept} aria-describedby={`${id}-hint`} aria-invalid={error === undefined ? undefined : true} onChange={(event) => { take(event.currentTarget.files); event.currentTarget.value = ''; }} />
        <Button onClick={() => input.current?.click()}><Icon name="file" />Choose a file</Button>
        <p className="hint" id={`${id}-hint`}>{hint}</p>
      </div>
      {error === undefined ? null : <p className="err" role="alert"><Icon name="bang" /><span>{error}</span></p>}
    </div>
  );
}
