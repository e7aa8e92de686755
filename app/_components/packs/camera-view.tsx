'use client';

import { useEffect, useEffectEvent, useRef } from 'react';
import { labelReader } from './label-reader';
import { newCodes } from './new-codes';
import { readCodes, whyNoCamera } from './read-codes';

interface CameraViewProps {
  /** called once for each code that comes into view; the next picture is looked at when it is done */
  readonly onCode: (code: string) => Promise<void>;
  readonly onRefused: (why: string) => void;
}

/** What the camera sees, while it stands on the page; taken off it, the camera is closed. */
export function CameraView({ onCode, onRefused }: CameraViewProps) {
  const video = useRef<HTMLVideoElement>(null);
  const came = useEffectEvent(onCode);
  const refused = useEffectEvent(onRefused);
  useEffect(() => {
    const [reader, shown, over] = [labelReader(), video.current, new AbortController()];
    if (reader === null || shown === null) return;
    const fresh = newCodes();
    readCodes(shown, reader, over.signal, async (codes) => {
      const code = fresh(codes);
      if (code !== null) await came(code);
    }).catch((error: unknown) => { if (!over.signal.aborted) refused(whyNoCamera(error)); });
    return () => over.abort();
  }, []);
  return <video ref={video} muted playsInline className="scan-view" aria-label="What the camera sees" />;
}
