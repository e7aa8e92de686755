/** The browser's own reader of codes; not every browser has one, and no library of types knows it yet. */
export interface LabelReader { detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]> }
type LabelReaderMaker = new (options: { readonly formats: readonly string[] }) => LabelReader;

/** Returns a reader of QR codes, or null where the browser has none or lets no page use the camera. */
export function labelReader(): LabelReader | null {
  const maker: unknown = Reflect.get(globalThis, 'BarcodeDetector');
  if (!isMaker(maker) || !('mediaDevices' in navigator)) return null;
  return new maker({ formats: ['qr_code'] });
}

function isMaker(value: unknown): value is LabelReaderMaker {
  return typeof value === 'function';
}

const PACK_PATH = /^\/packs\/[0-9a-f-]{36}$/;

/** Returns the path of a pack's page out of what stands in a label's code, or null: a code of anybody else leads nowhere. */
export function packPathOf(text: string, origin: string): string | null {
  if (!URL.canParse(text)) return null;
  const url = new URL(text);
  return url.origin === origin && PACK_PATH.test(url.pathname) ? url.pathname : null;
}
