import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, type Request } from '@playwright/test';

/** What a page did that nobody asked for. */
export interface Watched {
  readonly complaints: string[];
  readonly requests: Request[];
}

/** Keeps everything a page complains of and asks the network for, from now on. */
export function watch(page: Page): Watched {
  const watched: Watched = { complaints: [], requests: [] };
  page.on('console', (message) => { if (message.type() === 'error' || message.type() === 'warning') watched.complaints.push(message.text()); });
  page.on('pageerror', (error) => watched.complaints.push(error.message));
  page.on('request', (request) => watched.requests.push(request));
  return watched;
}

/** No complaint, and nothing asked of any other place. */
export function expectQuiet(page: Page, watched: Watched): void {
  const { origin } = new URL(page.url());
  expect(watched.complaints).toEqual([]);
  expect(watched.requests.map((request) => request.url()).filter((url) => !url.startsWith(origin) && !url.startsWith('data:') && !url.startsWith('blob:'))).toEqual([]);
}

/** The faults of a form. Next keeps an alert of its own in every page, outside of the main part. */
export function faultsOf(page: Page): Locator {
  return page.getByRole('main').getByRole('alert');
}

/** Pages do not look otherwise on another database: what runs on a second one does not look at them again. */
const LOOKS = process.env.E2E_SEEN_ALREADY === undefined;

/**
 * WCAG 2.2 A and AA, and good practice, of the page that is there: after a click its heading or its address is awaited
 * first, or the page before is examined. Without frames axe need not open a page of its own, and of a large page only the
 * faults are worth writing down; both take half of the time away.
 */
export async function expectAccessible(page: Page): Promise<void> {
  if (!LOOKS) return;
  await expectNoViolation(page, new AxeBuilder({ page }).options({ resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } }));
}

/** The same in the other colours, in which nothing but the contrast can be otherwise. */
export async function expectReadableInDark(page: Page): Promise<void> {
  if (!LOOKS) return;
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectNoViolation(page, new AxeBuilder({ page }).withRules(['color-contrast']).options({ resultTypes: ['violations'] }));
  await page.emulateMedia({ colorScheme: 'light' });
}

async function expectNoViolation(page: Page, axe: AxeBuilder): Promise<void> {
  const { violations } = await axe.setLegacyMode(true).analyze();
  expect(violations.map((violation) => ({ rule: violation.id, where: violation.nodes.map((node) => node.target.join(' ')) })), page.url()).toEqual([]);
}

/** The page is no wider than the window: nothing has to be pushed sideways to be read. */
export async function expectNoSidewaysScroll(page: Page): Promise<void> {
  const { wanted, given } = await page.evaluate(() => ({ wanted: document.documentElement.scrollWidth, given: document.documentElement.clientWidth }));
  expect(wanted).toBeLessThanOrEqual(given);
}
