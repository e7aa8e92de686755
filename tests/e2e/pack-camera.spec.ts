import { expect, type Locator, type Page } from '@playwright/test';
import { type EventWorld, makeEventWorld } from './support/event-world';
import { cameraRuns, fakeCamera, hold, holdNothing, refuseCamera } from './support/faked-camera';
import { addPack } from './support/pack-pages';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const CASE: EventWorld = { venue: 'Mill hall', packs: 20, prefix: 'K-', swollen: 'K-99', batch: 'camera batch' };
const UNKNOWN = '/packs/01900000-0000-7000-8000-000000000000';

test.use({ storageState: stateOf('organiser'), viewport: { width: 360, height: 740 } });
// One case with packs for all of them.
test.describe.configure({ mode: 'serial' });
test.slow();

let packsPage = '';

const words = (page: Page): Locator => page.locator('.scan').getByRole('status');
const box = (page: Page, label: string): Locator => page.getByRole('checkbox', { name: label });

/** The address that stands in the code of a pack's label. */
async function addressOf(page: Page, label: string): Promise<string> {
  return new URL(`/packs/${await box(page, label).getAttribute('value') ?? ''}`, page.url()).href;
}

/** What a finger needs: large enough, and nothing lies over it. */
async function expectInReach(key: Locator): Promise<void> {
  const size = await key.boundingBox();
  expect(Math.min(size?.width ?? 0, size?.height ?? 0)).toBeGreaterThanOrEqual(44);
  await key.click({ trial: true });
}

/** A long list scrolls; the words of one pack do not lie over the next one's. */
async function expectRowsApart(page: Page): Promise<void> {
  await expect(page.locator('.event-picks .check', { hasText: 'K-50' })).toContainText('look at its last check');
  const pressed = await page.locator('.event-picks .check').evaluateAll((rows) => rows.filter((row) => (row.querySelector('span')?.getBoundingClientRect().height ?? 0) > row.getBoundingClientRect().height).map(({ textContent }) => textContent));
  expect(pressed).toEqual([]);
}

test('packs are added one after the other, each said aloud, and the camera stays open', async ({ page }) => {
  await makeEventWorld(CASE);
  await fakeCamera(page);
  await addPack(page, 'K-50');
  const watched = watch(page);
  await page.goto('/events/new');
  await page.getByLabel('Name of the event').fill('Camera cup');
  await page.getByLabel('Place', { exact: true }).selectOption({ label: `${CASE.venue} (away)` });
  await page.getByLabel('Begins').fill('2099-11-05T09:00');
  await page.getByLabel('Ends').fill('2099-11-05T17:00');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.waitForURL(/\/events\/[0-9a-f-]{36}$/);
  packsPage = `${new URL(page.url()).pathname}/packs`;
  await page.goto(packsPage);
  await expectRowsApart(page);
  await box(page, 'K-04').check();
  const [one, two, swollen] = [await addressOf(page, 'K-01'), await addressOf(page, 'K-02'), await addressOf(page, CASE.swollen)];

  await page.getByRole('button', { name: 'Add packs with the camera' }).click();
  const close = page.getByRole('button', { name: 'Close the camera' });
  await expect(words(page)).toContainText('Hold the square code');
  await expect(page.getByLabel('What the camera sees')).toBeInViewport({ ratio: 1 });
  await expectInReach(close);
  await expectNoSidewaysScroll(page);

  await hold(page, one);
  await expect(words(page)).toHaveText(/^K-01 added, 1 of \d+\.$/);
  await hold(page, one, two);
  await expect(words(page)).toHaveText(/^K-02 added, 2 of \d+\.$/);
  await expect(page.getByText('2 are chosen.')).toBeVisible();
  await hold(page, swollen);
  await expect(words(page)).toHaveText('K-99 is isolated and does not go along. It was not added.');
  await hold(page, new URL(UNKNOWN, page.url()).href);
  await expect(words(page)).toContainText('no pack with this label');
  await hold(page, 'https://elsewhere.example/packs/1');
  await expect(words(page)).toContainText('not of a pack of this register');
  await holdNothing(page);
  await hold(page, one);
  await expect(words(page)).toHaveText(/^K-01 is on the list already, 2 of \d+\.$/);
  await expectAccessible(page);
  expect(await cameraRuns(page)).toBe(true);
  await close.click();
  expect(await cameraRuns(page)).toBe(false);
  for (const label of ['K-01', 'K-02', 'K-04']) await expect(box(page, label)).toBeChecked();
  await expect(box(page, CASE.swollen)).not.toBeChecked();
  await page.getByRole('button', { name: 'Save these' }).click();
  await expect(page.getByRole('heading', { name: '3 packs go along' })).toBeVisible();
  expectQuiet(page, watched);
});

test('what somebody else adds meanwhile is not taken off by saving a page that has not seen it', async ({ page, context }) => {
  await fakeCamera(page);
  await page.goto(packsPage);
  const other = await context.newPage();
  await other.goto(packsPage);
  await other.getByLabel('By label').fill(CASE.swollen);
  await other.getByRole('button', { name: 'Save these' }).click();
  await expect(other.getByRole('heading', { name: '4 packs go along' })).toBeVisible();
  await hold(page, await addressOf(page, 'K-03'));
  await page.getByRole('button', { name: 'Add packs with the camera' }).click();
  await expect(words(page)).toHaveText(/^K-03 added, 5 of \d+\.$/);
  await page.getByRole('button', { name: 'Save these' }).click();
  await expect(faultsOf(page)).toContainText('Somebody else changed this event');
  await other.reload();
  await expect(other.getByRole('heading', { name: '5 packs go along' })).toBeVisible();
});

test('a camera that is refused says why, and labels can be typed', async ({ page }) => {
  await fakeCamera(page);
  await refuseCamera(page);
  await page.goto(packsPage);
  await page.getByRole('button', { name: 'Add packs with the camera' }).click();
  await expect(words(page)).toContainText('does not let this page use the camera');
  await expect(words(page)).toContainText('type their labels below');
  await expect(page.getByRole('button', { name: 'Add packs with the camera' })).toBeVisible();
  await expect(page.getByLabel('By label')).toBeVisible();
});

test('where the browser cannot read codes there is no key for it', async ({ page }) => {
  await page.addInitScript(() => { Reflect.deleteProperty(window, 'BarcodeDetector'); });
  await page.goto(packsPage);
  await expect(page.getByLabel('By label')).toBeVisible();
  await expect(page.getByRole('button', { name: /camera/ })).toHaveCount(0);
});

test('in the register the same camera opens the page of the pack', async ({ page }) => {
  await fakeCamera(page);
  await page.goto(packsPage);
  const address = await addressOf(page, 'K-02');
  await page.goto('/packs');
  await page.getByRole('button', { name: 'Scan a label' }).click();
  await expectInReach(page.getByRole('button', { name: 'Close the camera' }));
  await hold(page, 'https://elsewhere.example/packs/1');
  await expect(words(page)).toContainText('not of a pack of this register');
  await hold(page, address);
  await expect(page.getByRole('heading', { level: 1, name: 'K-02' })).toBeVisible();
  expect(await cameraRuns(page)).toBe(false);
});
