import { readFile } from 'node:fs/promises';
import { expect } from '@playwright/test';
import sharp from 'sharp';
import { fillIncident, recordIncident } from './support/incident-pages';
import { addPack } from './support/pack-pages';
import { officerPage } from './support/join-school';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 640 };

const photo = () => sharp({ create: { width: 80, height: 60, channels: 3, background: '#a82a06' } }).withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } }).jpeg().toBuffer();

test.describe('on a phone', () => {
  test.use({ storageState: stateOf('organiser'), viewport: PHONE });

  test('an incident isolates its packs, asks where they are, is corrected, reviewed and closed', async ({ page, browser }) => {
    test.slow();
    const watched = watch(page);
    await addPack(page, 'I-11');
    await addPack(page, 'I-07');
    await page.goto('/incidents/new');
    await page.getByRole('button', { name: 'Save it' }).click();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(6);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);

    await fillIncident(page, 'yard');
    await page.getByLabel('Packs that took part').first().fill('i-11, Z-9');
    await page.getByLabel('Packs that only lay near').first().fill('I-07');
    await page.getByLabel('In a few words').fill('came off the charger puffed up');
    await page.getByLabel('Photos').setInputFiles({ name: 'dent.jpg', mimeType: 'image/jpeg', buffer: await photo() });
    await page.getByRole('button', { name: 'Save. Mark i-11, Z-9, I-07 isolated' }).click();
    await expect(page.getByRole('heading', { name: /^Saved as incident/ })).toBeVisible();
    await expect(page.getByText('Marked isolated in the register: I-11, I-07.')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Not in the register: Z-9' })).toBeVisible();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);

    for (const label of ['I-11', 'I-07']) {
      await page.getByRole('group', { name: `${label} is` }).getByRole('radio', { name: 'Outdoor spot' }).check();
      await page.getByRole('button', { name: `Keep where ${label} is` }).click();
      await expect(page.getByRole('button', { name: `Keep where ${label} is` })).toHaveCount(0);
    }

    await page.getByRole('link', { name: 'Correct What was done' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'Correct: What was done' })).toBeVisible();
    await expectAccessible(page);
    await page.getByLabel('What else was done').fill('everybody out of the room');
    await page.getByRole('button', { name: 'Save the correction' }).click();
    await expect(faultsOf(page)).toContainText('Write why');
    await page.getByLabel('Why it is said anew').fill('forgotten');
    await page.getByRole('button', { name: 'Save the correction' }).click();
    await expect(page.getByText(/^Before: Nothing written\. Corrected by Kim Marsh/)).toContainText('forgotten');

    const address = page.url().split('?')[0] ?? '';
    const image = await page.request.get(String(await page.getByRole('img', { name: /^Photo 1/ }).getAttribute('src')));
    expect((await sharp(await image.body()).metadata()).exif).toBeUndefined();

    await page.goto('/packs?find=I-1');
    await expect(page.getByRole('row', { name: 'I-11' })).toContainText('isolated');
    expectQuiet(page, watched);

    const officer = await officerPage(browser);
    await officer.goto(address);
    await expect(officer.getByRole('heading', { name: 'Before it can be closed' })).toBeVisible();
    await officer.getByRole('combobox', { name: 'Add', exact: true }).selectOption('cause');
    await officer.getByLabel('In words').fill('charged at twice the rate');
    await officer.getByRole('button', { name: 'Add it' }).click();
    await expect(officer.getByText('Cause: charged at twice the rate')).toBeVisible();
    await officer.getByLabel('Which risk of the assessment was it?').selectOption('none');
    await officer.getByRole('button', { name: 'Keep the risk' }).click();
    await expect(officer.getByText('Risk it belongs to: None')).toBeVisible();
    await officer.getByLabel('What is to be done').fill('Set 1C on every charger');
    await officer.getByLabel('Who does it').fill('K. M.');
    await officer.getByLabel('By when').fill('2027-01-10');
    await officer.getByRole('button', { name: 'Add the action' }).click();
    await expect(officer.getByRole('heading', { name: 'Nothing is left open.' })).toBeVisible();
    await expectAccessible(officer);
    await officer.getByLabel('What was learned').fill('the limit stands on the charger now');
    await officer.getByRole('button', { name: /^Close incident/ }).click();
    await expect(officer.getByText(/State: closed/)).toBeVisible();
    await expect(officer.getByRole('link', { name: /^Correct/ })).toHaveCount(0);
  });
});

test.describe('on a phone, by somebody whose draft is in nobody’s way', () => {
  test.use({ storageState: stateOf('event-organiser'), viewport: PHONE });

  test('what was typed survives a reload on this device, and a draft on any', async ({ page, browser }) => {
    test.slow();
    await page.goto('/incidents/new');
    await page.getByLabel('In a few words').fill('half a sentence');
    await page.getByRole('checkbox', { name: 'Ambulance', exact: true }).check();
    await page.reload();
    await expect(page.getByLabel('In a few words')).toHaveValue('half a sentence');
    await expect(page.getByRole('checkbox', { name: 'Ambulance', exact: true })).toBeChecked();
    await page.getByRole('button', { name: 'Keep as a draft' }).click();
    await expect(page.getByText('Kept as a draft, without photos.')).toBeVisible();

    const other = await (await browser.newContext({ storageState: stateOf('event-organiser') })).newPage();
    await other.goto('/incidents/new');
    await expect(other.getByRole('heading', { name: /^Your draft of/ })).toBeVisible();
    await expect(other.getByLabel('In a few words')).toHaveValue('half a sentence');
    await other.getByRole('button', { name: 'Begin with an empty form' }).click();
    await expect(other.getByRole('heading', { name: /^Your draft of/ })).toHaveCount(0);
    await expect(other.getByLabel('In a few words')).toHaveValue('');
  });
});

test.describe('on a desktop', () => {
  test.use({ storageState: stateOf('organiser'), viewport: { width: 1280, height: 900 } });

  test('the list is searched, and saved as a table without the people', async ({ page }) => {
    test.slow();
    await page.goto('/incidents/new');
    await fillIncident(page, 'roof');
    await page.getByLabel('In a few words').fill('=roof garden');
    await page.getByRole('button', { name: /^Save/ }).click();
    await expect(page.getByRole('heading', { name: /^Saved as incident/ })).toBeVisible();
    await page.goto('/incidents');
    await expectAccessible(page);
    await page.getByLabel('Find').fill('ROOF');
    await page.getByRole('button', { name: 'Find', exact: true }).click();
    await expect(page.getByRole('row')).toHaveCount(2);
    await expectNoSidewaysScroll(page);
    const download = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Save as CSV' }).click();
    const csv = await readFile(await (await download).path(), 'utf8');
    expect(csv).toContain("'=roof garden");
    await page.getByLabel('Find').fill('no such thing');
    await page.getByRole('button', { name: 'Find', exact: true }).click();
    await expect(page.getByText('No incident is like that.')).toBeVisible();
  });
});

test.describe('without client JavaScript', () => {
  test.use({ storageState: stateOf('helper'), javaScriptEnabled: false, viewport: PHONE });

  test('an incident is recorded, faults keep what was typed, and a helper reads none of others', async ({ page, browser }) => {
    test.slow();
    await page.goto('/incidents/new');
    await page.getByLabel('In a few words').fill('smelled sweet');
    await page.getByRole('button', { name: 'Save it' }).click();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(6);
    await expect(page.getByLabel('In a few words')).toHaveValue('smelled sweet');
    await fillIncident(page, 'corridor');
    await page.getByRole('button', { name: 'Save it' }).click();
    await expect(page.getByRole('heading', { name: /^Saved as incident/ })).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Review and closing' })).toHaveCount(0);

    const officer = await officerPage(browser);
    await recordIncident(officer, 'office');
    const [address] = officer.url().split('?');
    const response = await page.goto(String(address));
    expect(response?.status()).toBe(404);
    await page.goto('/incidents');
    await expect(page.getByRole('table')).not.toContainText('office');
  });
});
