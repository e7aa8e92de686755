'use client';

import { useRef, useState, useSyncExternalStore } from 'react';
import { Button } from '../ui/button';
import { CameraView } from './camera-view';
import { labelReader, packPathOf } from './label-reader';

const NEVER_CHANGES = (): (() => void) => () => undefined;
const HOLD = 'Hold the square code of a label into the picture. Nothing is kept or sent.';
const NOT_OURS = 'This code is not of a pack of this register.';

interface ScanLabelProps {
  /** stands on the key that opens the camera */
  readonly name: string;
  /** what to do where the camera is refused, a sentence */
  readonly otherwise: string;
  /** the camera is closed after the first pack; left out, it stays open until somebody closes it */
  readonly once?: boolean;
  /** what is done with a pack whose label was read, by the path of its page; returns what is said of it, and never throws */
  readonly onPack: (path: string) => Promise<string>;
}

/** Reads labels of packs with the camera. Where the browser cannot read codes it is not there, and the label is typed. */
export function ScanLabel({ name, otherwise, once = false, onPack }: ScanLabelProps) {
  const canRead = useSyncExternalStore(NEVER_CHANGES, () => labelReader() !== null, () => false);
  const place = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);
  const [words, setWords] = useState('');
  if (!canRead) return null;
  const close = (said: string): void => { setOpen(false); setWords(said); };
  const begin = (): void => {
    setWords(HOLD);
    setOpen(true);
    // On a phone key, words and picture are to be seen together.
    place.current?.scrollIntoView({ block: 'start' });
  };
  const read = async (code: string): Promise<void> => {
    const path = packPathOf(code, window.location.origin);
    if (path === null) return setWords(NOT_OURS);
    if (once) setOpen(false);
    setWords(await onPack(path));
  };
  return (
    <div className="scan" ref={place}>
      <Button onClick={open ? () => close('') : begin} aria-expanded={open}>{open ? 'Close the camera' : name}</Button>
      <p role="status" className="scan-words">{words}</p>
      {open ? <CameraView onCode={read} onRefused={(why) => close(`${why} ${otherwise}`)} /> : null}
    </div>
  );
}
