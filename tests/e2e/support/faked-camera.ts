import type { Page } from '@playwright/test';

/** What a browser of a phone has, and the one of the tests has not: a camera with an empty picture, and a reader of codes. */
export async function fakeCamera(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const inView = new Set<string>();
    Object.assign(window, { inView, looks: 0 });
    class Reader {
      detect(): Promise<readonly { readonly rawValue: string }[]> {
        Object.assign(window, { looks: Number(Reflect.get(window, 'looks')) + 1 });
        return Promise.resolve([...inView].map((rawValue) => ({ rawValue })));
      }
    }
    Object.assign(window, { BarcodeDetector: Reader });
    const picture = (): MediaStream => {
      const canvas = Object.assign(document.createElement('canvas'), { width: 640, height: 480 });
      const pen = canvas.getContext('2d');
      setInterval(() => { pen?.fillRect(0, 0, 640, 480); }, 50);
      const stream = canvas.captureStream(20);
      Object.assign(window, { track: stream.getTracks()[0] });
      return stream;
    };
    Object.defineProperty(navigator.mediaDevices, 'getUserMedia', { configurable: true, value: () => Promise.resolve(picture()) });
  });
}

/** The same where the person, or the device, lets no page use the camera. */
export async function refuseCamera(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(navigator.mediaDevices, 'getUserMedia', { value: () => Promise.reject(new DOMException('', 'NotAllowedError')) });
  });
}

/** Holds labels before the camera: these, and no others. */
export async function hold(page: Page, ...codes: readonly string[]): Promise<void> {
  await page.evaluate((held) => {
    const inView: unknown = Reflect.get(window, 'inView');
    if (!(inView instanceof Set)) throw new Error('fakeCamera comes first');
    inView.clear();
    for (const code of held) inView.add(code);
  }, codes);
}

/** Holds nothing before the camera, until all that was seen may come anew. */
export async function holdNothing(page: Page): Promise<void> {
  await hold(page);
  const before = await page.evaluate(() => Number(Reflect.get(window, 'looks')));
  await page.waitForFunction((least) => Number(Reflect.get(window, 'looks')) > least, before + 10);
}

/** Whether the camera that was opened last still runs. */
export function cameraRuns(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const track: unknown = Reflect.get(window, 'track');
    return track instanceof MediaStreamTrack && track.readyState === 'live';
  });
}
