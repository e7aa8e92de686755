import type { LabelReader } from './label-reader';

const LOOK_EVERY_MS = 250;

/**
 * Opens the camera into `shown` and hands on the codes of each picture, one picture after the other, until `over`; then
 * the camera is closed at once. Nothing is kept or sent.
 * @throws as the browser does, when the camera cannot be opened or its picture not be read
 */
export async function readCodes(shown: HTMLVideoElement, reader: LabelReader, over: AbortSignal, onCodes: (codes: readonly string[]) => Promise<void>): Promise<void> {
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  const close = (): void => { for (const track of stream.getTracks()) track.stop(); };
  over.addEventListener('abort', close);
  try {
    shown.srcObject = stream;
    await shown.play();
    while (!over.aborted) {
      const codes = shown.readyState >= shown.HAVE_CURRENT_DATA ? await reader.detect(shown) : [];
      if (!over.aborted) await onCodes(codes.map(({ rawValue }) => rawValue));
      await new Promise((resolve) => { setTimeout(resolve, LOOK_EVERY_MS); });
    }
  } finally {
    close();
  }
}

/** Why the camera did not open, in words a person can act on. */
export function whyNoCamera(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError') return 'The browser does not let this page use the camera. Allow it in the settings beside the address, then open it again.';
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'This device has no camera that the browser can find.';
  if (name === 'NotReadableError') return 'Another program is using the camera. Close it there, then open it again.';
  return 'The camera could not be opened, or its picture not be read.';
}
