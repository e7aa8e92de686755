import { readFile } from 'node:fs/promises';
import { expect } from '@playwright/test';
import { addPack, answerAll, checkUpToMeter, measure } from './support/pack-pages';
import { addPlace } from './support/place-pages';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 740 };
const DESKTOP = { width: 1280, height: 900 };

test.use({ storageState: stateOf('organiser') });

for (const [name, viewport, tag] of [['a phone', PHONE, []], ['a desktop', DESKTOP, ['@same-on-both']]] as const) {
  test.describe(`on ${name}`, { tag: [...tag] }, () => {
    test.use({ viewport });

    test('a place with a room, its size and its air', async ({ page }) => {
      test.slow();
      const watched = watch(page);
      const place = `Hall of ${name}`;
      await page.goto('/places/new');
      await page.getByRole('button', { name: 'Add the place' }).click();
      await expect(faultsOf(page).getByRole('link')).toHaveCount(3);
      await expectAccessible(page);
      await addPlace(page, place);
      await page.getByRole('link', { name: 'Add an area' }).click();
      await expect(page.getByRole('heading', { level: 1, name: 'What is the area for?' })).toBeVisible();
      await expectAccessible(page);
      await page.getByRole('link', { name: 'Charging' }).click();
      await page.getByLabel('Name', { exact: true }).fill('Charging table');
      await page.getByRole('radio', { name: 'No, in a room' }).check();
      await page.getByLabel('Length').fill('900');
      await page.getByLabel('Width', { exact: true }).fill('6,5');
      await page.getByLabel('Height', { exact: true }).fill('3');
      await page.getByRole('radio', { name: /gap is measured/ }).check();
      await page.getByLabel('Gap to outdoors, width').fill('1');
      await page.getByLabel('Gap to outdoors, height').fill('1');
      await page.getByRole('button', { name: 'Add the area' }).click();
      await expect(faultsOf(page)).toContainText('0.5 to 200 m');
      await expect(page.getByLabel('Width', { exact: true })).toHaveValue('6,5');
      await expect(page.getByRole('radio', { name: /gap is measured/ })).toBeChecked();
      await page.getByLabel('Length').fill('9');
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      await page.getByRole('button', { name: 'Add the area' }).click();
      const area = page.getByRole('region', { name: 'Charging table', exact: true });
      await expect(area).toContainText('9 × 6.5 × 3 m');
      await expect(area).toContainText(/about 1\.7 \(between/);
      await expect(area).toContainText('Until everybody is outnot known');
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      await page.goto(`/places?find=${encodeURIComponent(name)}`);
      await expect(page.getByRole('link', { name: place })).toBeVisible();
      await expectAccessible(page);
      expectQuiet(page, watched);
    });

    test('packs: typed, copied, found, checked, isolated, placed', async ({ page }) => {
      test.slow();
      const watched = watch(page);
      const stem = name === 'a phone' ? 'P' : 'D';
      await page.goto('/packs/new');
      await page.getByRole('button', { name: 'Add the pack' }).click();
      await expect(faultsOf(page).getByRole('link')).toHaveCount(5);
      await expectAccessible(page);
      await page.getByLabel('Cells in series').fill('4');
      await page.getByLabel('Capacity').fill('850');
      await page.getByRole('radio', { name: /^4\.20 V/ }).check();
      await expect(page.getByRole('status', { name: 'What follows from the label' })).toContainText('12.6');
      await expect(page.getByRole('status', { name: 'What follows from the label' })).toContainText('0.85');
      await addPack(page, `${stem}-09`);
      await expect(page.getByRole('heading', { name: 'Not checked yet' })).toBeVisible();
      await expect(page.getByText('Do not charge, fly or take along')).toBeVisible();
      await expectAccessible(page);
      await page.getByText('Copy it').first().click();
      await page.getByLabel('How many more').fill('2');
      await page.getByRole('button', { name: 'Copy it' }).click();
      await page.getByRole('searchbox', { name: 'Find' }).fill(`${stem}-1`);
      await page.getByRole('button', { name: 'Find', exact: true }).click();
      await expect(page.getByRole('row')).toHaveCount(3);
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);

      await page.getByRole('link', { name: `${stem}-10` }).click();
      await checkUpToMeter(page);
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      await measure(page, ['3.80', '3.81', '3,80', '3.79']);
      await expect(page.getByRole('heading', { name: 'Fit', exact: true })).toBeVisible();
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);

      await page.goto('/packs');
      await page.getByRole('link', { name: `${stem}-11` }).click();
      await checkUpToMeter(page);
      await measure(page, ['3.80', '3.81', '3.41', '3.79']);
      await expect(page.getByRole('heading', { name: 'Isolate now' })).toBeVisible();
      await expect(page.getByText('400 mV, limit 300 mV')).toBeVisible();
      await expect(page.getByRole('link', { name: 'Check it' })).toHaveCount(0);
      await expectAccessible(page);
      await page.goto(`/packs?find=${stem}-11`);
      await expect(page.getByRole('row', { name: `${stem}-11` })).toContainText('isolate now');
      await page.getByRole('link', { name: `${stem}-11` }).click();
      await page.getByRole('radio', { name: 'Outdoor spot' }).check();
      await page.getByRole('radio', { name: 'Yes', exact: true }).check();
      await page.getByRole('button', { name: 'Save where it is' }).click();
      await expect(page.getByRole('heading', { name: 'Isolated', exact: true })).toBeVisible();
      await expect(page.getByRole('region', { name: 'Where it is' })).toContainText('Outdoor spot');
      await expect(page.getByRole('region', { name: 'What happened to it' })).toContainText('Checked by Kim Marsh: Isolate. 3.80, 3.81, 3.41, 3.79 V.');
      await expectNoSidewaysScroll(page);
      expectQuiet(page, watched);
    });

    test('a sign that means leaving ends the check at once and opens the alarm screen', async ({ page }) => {
      test.slow();
      const label = name === 'a phone' ? 'PL-01' : 'DL-01';
      await addPack(page, label);
      await page.getByRole('link', { name: 'Check it' }).click();
      const question = page.getByRole('group', { name: 'Is it swelling while you watch?' });
      await question.getByRole('radio', { name: 'Not sure' }).check();
      await expect(page.getByRole('heading', { name: 'Leave it' })).toBeFocused();
      await expect(page.getByRole('button', { name: 'Next' })).toBeHidden();
      await expectAccessible(page);
      await page.getByRole('button', { name: /slip of the finger/ }).click();
      await expect(question.getByRole('radio', { name: 'Not sure' })).not.toBeChecked();
      await question.getByRole('radio', { name: 'Yes' }).check();
      await page.getByRole('button', { name: 'What to do now' }).click();
      await expect(page).toHaveURL(/\/emergency\/hot/);
      await page.goto(`/packs?find=${label}`);
      await expect(page.getByRole('row', { name: label })).toContainText('isolate now');
    });
  });
}

test('a table is read, every faulty cell is named, and nothing is entered before it is right', async ({ page }) => {
  test.slow();
  const watched = watch(page);
  await page.goto('/packs/import');
  await expectAccessible(page);
  await page.getByLabel('The table').fill('Label;Cells in series;Capacity, mAh;Full voltage of a cell;Second-hand;Colour\nT-01;4;850;4,20;no;red\nT-02;four;850;5.00;no;blue');
  await page.getByRole('button', { name: 'Read it' }).click();
  await expect(page.getByRole('status').filter({ hasText: '2 places have to be put right' })).toBeVisible();
  const faults = page.getByRole('table', { name: 'To be put right in the table above' });
  await expect(faults.getByRole('row')).toHaveCount(3);
  await expect(faults).toContainText('Write one of: 4.20, 4.35, not marked, other, other chemistry');
  await expect(page.getByText('Nothing is known of: Colour.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Enter/ })).toHaveCount(0);
  await expectAccessible(page);
  await page.getByLabel('Or a file').setInputFiles({ name: 'packs.csv', mimeType: 'text/csv', buffer: Buffer.from('\uFEFFPack,S,mAh,Full voltage,Used\r\nT-01,4S,850,4.20,no\r\n"=T-02",6,1100,hv,yes\r\n') });
  await page.getByRole('button', { name: 'Read it again' }).click();
  await page.getByRole('button', { name: 'Enter these 2 packs' }).click();
  await expect(page).toHaveURL('/packs');
  await expect(page.getByRole('link', { name: 'T-01', exact: true })).toBeVisible();

  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Save as CSV' }).click();
  const csv = await readFile(await (await download).path(), 'utf8');
  expect(csv.split('\r\n')[0]).toContain('Label,Cells in series');
  expect(csv).toContain("'=T-02");
  expectQuiet(page, watched);
});

test('labels carry a code for each pack', { tag: '@same-on-both' }, async ({ page }) => {
  await addPack(page, 'Q-01');
  await page.getByRole('link', { name: 'Print its label' }).click();
  await expect(page.getByRole('img', { name: 'Code that opens the page of Q-01' })).toBeVisible();
  await expect(page.getByText('full 4.20 V a cell')).toBeVisible();
  await expectAccessible(page);
});

test('somebody who changed it meanwhile is not overwritten', async ({ page, context }) => {
  test.slow();
  await addPack(page, 'R-01');
  const other = await context.newPage();
  await page.getByRole('link', { name: 'Change its details' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Change R-01' })).toBeVisible();
  await other.goto(page.url());
  await other.getByRole('textbox', { name: 'Maker' }).fill('Tern');
  await other.getByRole('button', { name: 'Save' }).click();
  await expect(other.getByRole('heading', { level: 1, name: 'R-01' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Maker' }).fill('Swift');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(faultsOf(page)).toContainText('Somebody else changed this pack');
  await expect(page.getByRole('textbox', { name: 'Maker' })).toHaveValue('Swift');
});

test.describe('without client JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('a pack is added, its faults named, and checked from page to page to a sign that means leaving', async ({ page }) => {
    test.slow();
    await page.goto('/packs/new');
    await page.getByLabel('Label', { exact: true }).fill('N-01');
    await page.getByRole('button', { name: 'Add the pack' }).click();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(4);
    await expect(page.getByLabel('Label', { exact: true })).toHaveValue('N-01');
    await addPack(page, 'N-01');
    await page.getByRole('link', { name: 'Check it' }).click();
    await expect(page.getByRole('heading', { name: 'Look', exact: true })).toBeVisible();
    await answerAll(page);
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(page.getByRole('heading', { name: 'Listen and smell' })).toBeVisible();
    await page.getByRole('button', { name: /^Back to/ }).click();
    await expect(page.getByRole('radio', { name: 'No', exact: true }).first()).toBeChecked();
    await page.getByRole('button', { name: 'Next' }).click();
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(2);
    await page.getByRole('group', { name: /hiss/ }).getByRole('radio', { name: 'Yes' }).check();
    await page.getByRole('button', { name: 'Next' }).click();
    await expect(page).toHaveURL(/\/emergency$/);
  });

  test('an area is added', async ({ page }) => {
    await addPlace(page, 'Quiet yard');
    await page.getByRole('link', { name: 'Add an area' }).click();
    await page.getByRole('link', { name: 'Outdoor spot for suspect packs' }).click();
    await page.getByLabel('Name', { exact: true }).fill('By the wall');
    await page.getByRole('radio', { name: 'Yes, outdoors' }).check();
    await page.getByLabel('To the nearest thing that could burn').fill('5');
    await page.getByRole('button', { name: 'Add the area' }).click();
    await expect(page.getByRole('region', { name: 'By the wall' })).toContainText('5 m');
  });
});

test.describe('another school', () => {
  test.use({ storageState: stateOf('other-school') });

  test('sees none of it, by no address', async ({ page, browser }) => {
    const ours = await (await browser.newContext({ storageState: stateOf('organiser') })).newPage();
    await addPack(ours, 'O-01');
    const address = new URL(ours.url()).pathname;
    await page.goto('/packs');
    await expect(page.getByRole('heading', { name: 'No packs yet' })).toBeVisible();
    for (const path of [address, `${address}/check`, `${address}/edit`]) expect((await page.goto(path))?.status()).toBe(404);
    expect(await (await page.request.get('/packs/export')).text()).not.toContain('O-01');
  });
});

test.describe('a helper', () => {
  test.use({ storageState: stateOf('helper') });

  test('checks and isolates, and enters or changes nothing', async ({ page }) => {
    for (const path of ['/packs/new', '/packs/import', '/places/new']) expect((await page.goto(path))?.status()).toBe(403);
    await page.goto('/packs');
    await expect(page.getByRole('link', { name: 'Add a pack' })).toHaveCount(0);
  });
});
