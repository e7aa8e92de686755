import { expect, type Page } from '@playwright/test';
import { addPack, checkUpToMeter, measure } from './support/pack-pages';
import { addPlace } from './support/place-pages';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

test.use({ storageState: stateOf('organiser'), viewport: { width: 360, height: 740 } });

async function addFitPack(page: Page, label: string): Promise<void> {
  await addPack(page, label);
  await checkUpToMeter(page);
  await measure(page, ['3.80', '3.81', '3.80', '3.79']);
  await expect(page.getByRole('heading', { name: 'Fit', exact: true })).toBeVisible();
}

/** Answers every point of a check, one of them otherwise. */
async function answerPoints(page: Page, otherwise?: RegExp): Promise<void> {
  for (const radio of await page.getByRole('main').getByRole('radio', { name: 'Yes', exact: true }).all()) await radio.check();
  if (otherwise !== undefined) await page.getByRole('group', { name: otherwise }).getByRole('radio', { name: 'No', exact: true }).check();
}

/** With one place there is nothing to choose. */
async function choosePlace(page: Page, place: string): Promise<void> {
  const choice = page.getByRole('radio', { name: place });
  if (await choice.count() > 0) await choice.check();
}

test('opening check, packs charged and crashed in two presses, closing check', async ({ page }) => {
  test.slow();
  await addPlace(page, 'Session hall');
  await addFitPack(page, 'S-01');
  await addPack(page, 'S-02');
  const watched = watch(page);
  await page.goto('/sessions/new');
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Save the check' }).click();
  await expect(faultsOf(page)).toBeVisible();
  await choosePlace(page, 'Session hall');
  await answerPoints(page);
  await page.getByLabel('People in the room, you included').fill('12');
  await page.getByRole('button', { name: 'Save the check' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'A session is open' })).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);

  await page.getByRole('button', { name: 'They were charged' }).click();
  await expect(faultsOf(page)).toContainText('Choose the packs first');
  await page.getByRole('checkbox', { name: 'S-01' }).check();
  await expect(page.getByRole('checkbox', { name: 'S-02' })).toHaveCount(0);
  await page.getByRole('button', { name: 'They were charged' }).click();
  await expect(page.getByRole('checkbox', { name: 'S-01 (1)' })).not.toBeChecked();
  await page.getByRole('checkbox', { name: 'S-01 (1)' }).check();
  await page.getByRole('button', { name: 'They crashed' }).click();
  await expect(page.getByRole('region', { name: 'Packs of the session' }).getByRole('row', { name: 'S-01' })).toContainText('1');
  await expect(page.getByText('1 charge, 1 crash')).toBeVisible();

  const closing = page.getByRole('region', { name: 'Closing check' });
  await answerPoints(page, /chargers off/);
  await closing.getByRole('button', { name: 'Close the session' }).click();
  await expect(faultsOf(page)).toContainText('Write what is not so');
  await closing.getByLabel('Note').fill('Kim goes back and pulls the plug.');
  await closing.getByRole('button', { name: 'Close the session' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Session, closed' })).toBeVisible();
  await expectAccessible(page);
  await page.goto('/sessions?find=session%20hall');
  await expect(page.getByRole('row', { name: /Session hall/ })).toContainText('a charger is still on');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  expectQuiet(page, watched);
});

test.describe('without client JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('a check that is not good begins no session; a good one logs a charge', async ({ page }) => {
    test.slow();
    await addPlace(page, 'Quiet hall');
    await page.goto('/sessions/new');
    await choosePlace(page, 'Quiet hall');
    await answerPoints(page, /way out/);
    await page.getByRole('button', { name: 'Save the check' }).click();
    await expect(page.getByRole('heading', { level: 2, name: 'Nobody charges or flies' })).toBeVisible();
    await page.getByRole('link', { name: 'Make the check again' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'Opening check' })).toBeVisible();
    await choosePlace(page, 'Quiet hall');
    await answerPoints(page);
    await page.getByRole('button', { name: 'Save the check' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'A session is open' })).toBeVisible();
    await expect(page.getByText(/No pack may be charged now|Which packs/).first()).toBeVisible();
  });
});

test.describe('another school', () => {
  test.use({ storageState: stateOf('other-school') });

  test('has a log and a trend of its own', async ({ page }) => {
    await page.goto('/sessions');
    await expect(page.getByRole('heading', { level: 1, name: 'No session yet' })).toBeVisible();
    await page.goto('/trend');
    await expect(page.getByRole('heading', { level: 1, name: 'No charge is logged yet' })).toBeVisible();
    await expectAccessible(page);
  });
});
