'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { Button } from '@/app/_components/ui/button';
import { labelReader, packPathOf } from './label-reader';

const LOOK_EVERY_MS = 250;
const NEVER_CHANGES = (): (() => void) => () => undefined;

/** Opens the page of a pack by the code on its label. Where the browser cannot read codes, the label is typed into the field above. */
export function ScanLabel() {
  const canRead = useSyncExternalStore(NEVER_CHANGES, () => labelReader() !== null, () => false);
  const [open, setOpen] = useState(false);
  const [words, setWords] = useState('');
  if (!canRead) return null;
  const end = (said: string): void => { setOpen(false); setWords(said); };
  return (
    <div className="scan">
      <Button onClick={() => { setWords(''); setOpen(!open); }} aria-expanded={open}>{open ? 'Stop the camera' : 'Scan a label'}</Button>
      {open ? <Camera onEnd={end} /> : null}
      <p role="status" className="small">{words}</p>
    </div>
  );
}

const NO_CAMERA = 'The camera could not be opened. Allow it in your browser, or type the label above.';

function Camera({ onEnd }: { readonly onEnd: (said: string) => void }) {
  const video = useRef<HTMLVideoElement>(null);
  const router = useRouter();
  const [words, setWords] = useState('Hold the code of the label into the picture. Nothing is kept or sent.');
  useEffect(() => {
    const [reader, shown] = [labelReader(), video.current];
    if (reader === null || shown === null) return;
    let [stream, timer]: [MediaStream | null, ReturnType<typeof setTimeout> | undefined] = [null, undefined];
    let over = false;
    const look = async (): Promise<void> => {
      const codes = shown.readyState >= shown.HAVE_CURRENT_DATA ? await reader.detect(shown) : [];
      if (over) return;
      const paths = codes.map(({ rawValue }) => packPathOf(rawValue, window.location.origin));
      const path = paths.find((one) => one !== null);
      if (path !== undefined) return router.push(path);
      if (paths.length > 0) setWords('This code is not of a pack of this register.');
      timer = setTimeout(next, LOOK_EVERY_MS);
    };
    const next = (): void => { look().catch(() => onEnd(NO_CAMERA)); };
    navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } }).then(async (got) => {
      if (over) return stopAll(got);
      stream = got;
      shown.srcObject = got;
      await shown.play();
      next();
    }).catch(() => { if (!over) onEnd(NO_CAMERA); });
    return () => {
      over = true;
      clearTimeout(timer);
      if (stream !== null) stopAll(stream);
    };
  }, [router, onEnd]);
  return <><video ref={video} muted playsInline className="scan-view" aria-label="What the camera sees" /><p role="status" className="small muted">{words}</p></>;
}

function stopAll(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
