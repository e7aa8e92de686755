import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { scored } from './support/room-page';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll } from './support/watched-page';

const NOTHING = '{"format": "sandbucket-assessment.v1", "id": "mine", "title": "Mine", "answers": {}}';

async function openText(page: Page, text: string): Promise<void> {
  await page.goto('/try');
  await page.getByRole('textbox', { name: 'Or paste its text' }).fill(text);
  await page.getByRole('button', { name: 'Read it' }).click();
  await scored(page);
}

/** The document as the page would save it. */
async function saved(page: Page): Promise<Readonly<Record<string, unknown>>> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Download the document' }).click()]);
  return JSON.parse(readFileSync(await download.path(), 'utf8')) as Readonly<Record<string, unknown>>;
}

/** Opens the page of the answers with this heading. */
const openPage = (page: Page, title: RegExp): Promise<void> => page.locator('#answers summary').filter({ hasText: title }).first().click();

test('on a phone every line has its four answers under the thumb, and a blank one says so', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openText(page, NOTHING);
  await openPage(page, /^Alarm and response/);
  const line = page.getByRole('group', { name: /^We practised this term/ });
  await expect(line.getByText('Not answered: counts as not sure.')).toBeVisible();
  for (const name of ['Yes', 'Partly', 'No', 'Not sure']) {
    const box = await line.getByRole('radio', { name, exact: true }).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(44);
    expect(box?.width).toBeGreaterThanOrEqual(44);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(360);
  }
  await line.getByRole('radio', { name: 'Partly' }).check();
  await expect(line.getByText('Not answered')).toHaveCount(0);
  await expect(line).toHaveAccessibleDescription(/Talked through, not walked/);
  await expectNoSidewaysScroll(page);
  await expectAccessible(page);
  expect(await saved(page)).toMatchObject({ answers: { 'response-ready': { drill: 'partly' } } });
});

test('a time is given in minutes and seconds, a share of ten, and kept as the calculation needs them', async ({ page }) => {
  await openText(page, NOTHING);
  await openPage(page, /^People and building/);
  const leave = page.getByRole('group', { name: 'until everybody is out' });
  await leave.getByRole('textbox', { name: 'minutes' }).fill('1');
  await leave.getByRole('textbox', { name: 'seconds' }).fill('30');
  await leave.getByRole('textbox', { name: 'seconds' }).blur();
  await openPage(page, /^Packs and use/);
  await page.getByRole('textbox', { name: /hard crashes/ }).fill('3');
  await page.getByRole('textbox', { name: /hard crashes/ }).blur();
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeVisible();
  await scored(page);
  expect(await saved(page)).toMatchObject({ answers: { 'room-leave': { chargingEvac: 90 }, 'team-use': { crashShare: 0.3 } }, contentVersion: '2.0.0' });
  await expect(page.getByRole('complementary', { name: 'Behind the numbers' })).toContainText('content edition 2 (2.0.0)');
});

test('a document of the first edition is read with the second, which says what it could not answer', async ({ page }) => {
  await openText(page, NOTHING.replace('"answers": {}', '"contentVersion": "0.1.0", "answers": {"room-size": {"chargingVolume": 180}, "response-ready": ["drill"]}'));
  const about = page.locator('.notice').filter({ has: page.getByRole('heading', { name: 'About this document' }) });
  await expect(about).toContainText('is of edition 1');
  await openPage(page, /^The room and its air/);
  await expect(page.getByText('From an earlier edition: volume, 180 m³. It still counts until you give length, width, height.')).toBeVisible();
  await openPage(page, /^Alarm and response/);
  await expect(page.getByRole('group', { name: /^We practised this term/ }).getByRole('radio', { name: 'Yes' })).toBeChecked();
  await expect(page.getByRole('group', { name: /^The other users of hall/ }).getByText('Not answered')).toBeVisible();
  expect(await saved(page)).toMatchObject({ contentVersion: '0.1.0', answers: { 'response-ready': ['drill'] } });
});

test('a stop says whether anybody may accept it, and leads to its answer', async ({ page }) => {
  await openText(page, NOTHING.replace('"answers": {}', '"answers": {"damaged-outdoors": "no"}'));
  const stops = page.locator('#stops');
  await expect(stops).toContainText('A grade says how we rank what is left. A stop says do not start, whatever the grade.');
  const outdoors = stops.locator('#stop-no-outdoor-spot');
  await expect(outdoors).toContainText('Accepted for 30 days at most, with something in its place.');
  await expect(stops.locator('#stop-no-alarm')).toContainText('Never accepted.');
  await outdoors.getByRole('link', { name: /^Go to the answer/ }).click();
  await expect(page.getByRole('group', { name: /Is there a spot outdoors/ })).toBeFocused();
});

test('what nobody has asked is listed, and what is closed on the screen is open on paper', async ({ page }) => {
  await openText(page, NOTHING.replace('"answers": {}', '"answers": {"team-limit-asked": "not-yet"}'));
  await expect(page.getByRole('table', { name: 'Printed as answered' })).toContainText('Not asked yet');
  const risk = page.getByRole('heading', { name: 'What leads to it, what follows' });
  const choice = page.getByRole('group', { name: 'Where are packs charged?' });
  await expect(risk).toHaveCount(0);
  await expect(choice).toHaveCount(0);
  await page.emulateMedia({ media: 'print' });
  await expect(risk.first()).toBeVisible();
  await expect(choice).toBeVisible();
  await expect(page.getByRole('table', { name: /Numbers of the kind/ }).first()).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await expect(risk).toHaveCount(0);
});
