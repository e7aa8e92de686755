import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import sharp from 'sharp';
import { addPlaceWithRoom, beginAssessment, saveAndGoOn } from './support/assessment-pages';
import { scoreByCommand } from './support/score-command';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 740 };

test.use({ storageState: stateOf('organiser'), viewport: PHONE });

async function answerFirstPage(page: Page): Promise<void> {
  await page.getByRole('radio', { name: /^In a room or hall/ }).check();
  await page.getByRole('radio', { name: /^One, always unlocked/ }).check();
  await page.getByRole('radio', { name: /^Yes, everybody/ }).check();
}

test('the walk on a phone: known facts are confirmed, pages saved, what they change told afterwards, and left at any time', async ({ page }) => {
  test.slow();
  const watched = watch(page);
  await addPlaceWithRoom(page, 'Walk house');
  await page.goto('/assessments/new');
  await expectAccessible(page);
  const overview = await beginAssessment(page, 'Walk house', 'Walk room');
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await expect(page.getByRole('status').filter({ hasText: 'Saved' })).toHaveCount(0);
  await expect(page.getByText(/stops you/i)).toHaveCount(0);

  await page.getByRole('radio', { name: /^Any way out is sometimes locked/ }).check();
  await page.getByRole('radio', { name: /^Yes, everybody/ }).check();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/walk\/first-charging\?saved$/);
  await expect(page.getByRole('heading', { name: 'Saved: 2 answers changed.' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByRole('radio', { name: /^In a room or hall/ }).check();
  await page.getByRole('radio', { name: /^One, always unlocked/ }).check();
  await page.getByRole('button', { name: 'Save and stop' }).click();
  await expect(page).toHaveURL(`${overview}?saved`);
  await expect(page.getByText(/Stops you no more:/).first()).toBeVisible();
  await expect(page.getByText(/The total of all risks/)).toBeVisible();
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: /^Go on with/ }).click();
  await expect(page).toHaveURL(/\/walk\/first-charging$/);

  await page.goto(`${overview}/walk/room-air`);
  await expect(page.getByLabel('length')).toHaveValue('9');
  await expect(page.getByText('As in the register (Walk house, Charging room).')).toBeVisible();
  await page.getByLabel('length').fill('wide');
  await saveAndGoOn(page).click();
  await expect(faultsOf(page)).toBeFocused();
  await expect(page.getByLabel('length')).toHaveValue('wide');
  await expectAccessible(page);
  await page.getByLabel('length').fill('8');
  await page.getByRole('radio', { name: /^Open straight to outdoors, and we can measure/ }).check();
  await saveAndGoOn(page).click();
  // The answer brought up a question of the same page.
  await expect(page).toHaveURL(/\/walk\/room-air\?saved$/);
  await expect(page.getByRole('group', { name: 'How large is the gap to outdoors?' })).toBeVisible();
  await expect(page.getByText('One more question applies now.')).toBeVisible();
  await expect(page.getByText('The register says something else')).toBeVisible();
  await page.getByRole('button', { name: /^Take that/ }).click();
  await expect(page.getByLabel('length')).toHaveValue('9');
  await page.getByText('Note for the officer, photo').first().click();
  await page.getByLabel(/^Photos: How large is the charging room/).setInputFiles({ name: 'room.png', mimeType: 'image/png', buffer: await sharp({ create: { width: 40, height: 30, channels: 3, background: '#a97b2f' } }).png().toBuffer() });
  await page.getByLabel(/^Note for the officer: How large is the charging room/).fill('Measured on Monday');
  await page.getByRole('button', { name: 'Save and stop' }).click();
  await expect(page).toHaveURL(`${overview}?saved`);
  await page.goto(`${overview}/walk/room-air`);
  await expect(page.getByRole('img', { name: /^Photo 1 to/ })).toHaveJSProperty('naturalWidth', 40);
  await expect(page.getByLabel(/^Note for the officer: How large is the charging room/)).toHaveValue('Measured on Monday');
  await expectAccessible(page);
  await page.getByRole('button', { name: /^Take it away/ }).click();
  await expect(page.getByRole('img', { name: /^Photo 1 to/ })).toHaveCount(0);
  await page.goto('/assessments?q=walk+room');
  await expect(page.getByRole('link', { name: 'Walk room' })).toBeVisible();
  await expectAccessible(page);
  expectQuiet(page, watched);
});

test('of two who answer at once, neither is written over: both answers stand there, and one is chosen', async ({ page, context }) => {
  test.slow();
  await addPlaceWithRoom(page, 'Two tabs');
  const overview = await beginAssessment(page, 'Two tabs', 'Room of two');
  const other = await context.newPage();
  await other.goto(`${overview}/walk/first-place`);
  await answerFirstPage(page);
  await saveAndGoOn(page).click();
  await expect(page).toHaveURL(/first-charging/);

  await other.getByRole('radio', { name: /^Two or more, far apart/ }).check();
  await other.getByRole('radio', { name: /^Yes, everybody/ }).check();
  await saveAndGoOn(other).click();
  await expect(faultsOf(other)).toBeFocused();
  await expect(faultsOf(other)).toContainText('What are the ways out');
  const exits = other.getByRole('group', { name: /answered this while you were at it/ });
  await expect(exits).toContainText('One, always unlocked and clear');
  await expect(exits).toContainText('Two or more, far apart');
  await expectNoSidewaysScroll(other);
  // Tall enough that nothing lies under the buttons at the foot.
  await other.setViewportSize({ ...PHONE, height: 3000 });
  await expectAccessible(other);
  await other.setViewportSize(PHONE);
  // What this one left empty, and what both say, is no conflict. Without a choice it is refused again, and what was typed still stands.
  await saveAndGoOn(other).click();
  await expect(exits).toBeVisible();
  await expect(other.getByRole('radio', { name: /^Two or more, far apart/ })).toBeChecked();
  await exits.getByRole('radio', { name: /^Mine/ }).check();
  await saveAndGoOn(other).click();
  await expect(other).toHaveURL(/first-charging\?saved/);
  await page.goto(`${overview}/walk/first-place`);
  await expect(page.getByRole('radio', { name: /^Two or more, far apart/ })).toBeChecked();
  await expect(page.getByRole('radio', { name: /^In a room or hall/ })).toBeChecked();
});

test.describe('without client script', () => {
  test('a page is saved, faults come back with what was typed, and the walk goes on', async ({ page, browser }) => {
    test.slow();
    await addPlaceWithRoom(page, 'No script');
    const overview = await beginAssessment(page, 'No script', 'Plain room');
    const context = await browser.newContext({ storageState: stateOf('organiser'), javaScriptEnabled: false, viewport: PHONE });
    const plain = await context.newPage();
    await plain.goto(`${overview}/walk/room-air`);
    await plain.getByLabel('height').fill('tall');
    await plain.getByRole('radio', { name: /^Everything is shut/ }).check();
    await saveAndGoOn(plain).click();
    await expect(faultsOf(plain)).toContainText('number');
    await expect(plain.getByLabel('height')).toHaveValue('tall');
    await expect(plain.getByRole('radio', { name: /^Everything is shut/ })).toBeChecked();
    await plain.getByLabel('height').fill('2.8');
    await saveAndGoOn(plain).click();
    await expect(plain).toHaveURL(/\/walk\/room-people\?saved$/);
    await expect(plain.getByRole('heading', { name: 'Saved: 2 answers changed.' })).toBeVisible();
    await plain.goto(`${overview}/walk`);
    await expect(plain).toHaveURL(/\/walk\/first-place$/);
  });
});

test('the caretaker answers by a link, without an account, until it is taken back', async ({ page, browser }) => {
  test.slow();
  await addPlaceWithRoom(page, 'Caretaker house');
  const overview = await beginAssessment(page, 'Caretaker house', 'Room of Mr Hale');
  await page.goto(`${overview}/caretaker`);
  await expectAccessible(page);
  await page.getByLabel('Who is to answer?').fill('Mr Hale, caretaker');
  await page.getByRole('button', { name: 'Make a link' }).click();
  const link = await page.getByLabel('Link for Mr Hale, caretaker').inputValue();

  const context = await browser.newContext({ viewport: PHONE });
  const theirs = await context.newPage();
  await theirs.goto(link);
  await expect(theirs.getByRole('heading', { level: 1 })).toContainText('questions about the building');
  await expectAccessible(theirs);
  await expectNoSidewaysScroll(theirs);
  const line = theirs.getByRole('group', { name: 'What does the building give you?' }).getByRole('radio', { name: 'Yes', exact: true }).first();
  await line.check();
  await theirs.getByRole('button', { name: 'Save my answers' }).click();
  await expect(faultsOf(theirs)).toContainText('Enter your name');
  await expect(line).toBeChecked();
  await theirs.getByLabel('Your name').fill('T. Hale');
  await theirs.getByRole('button', { name: 'Save my answers' }).click();
  await expect(theirs.getByRole('status')).toContainText('Saved. Thank you.');

  await page.goto(`${overview}/walk/room-people`);
  await expect(page.getByText(/^T\. Hale \(by link\), /)).toBeVisible();
  await page.goto(`${overview}/caretaker`);
  await page.getByRole('button', { name: /^Take it back/ }).click();
  await expect(page.getByText(/taken back\. Answered: T\. Hale/)).toBeVisible();
  await theirs.goto(link);
  await expect(theirs.getByRole('heading', { name: 'This link does not work' })).toBeVisible();
  await theirs.goto(`${link.slice(0, -4)}aaaa`);
  await expect(theirs.getByText('not one of ours')).toBeVisible();
});

test('a file becomes a draft, and the saved document gives the command the figures it had', async ({ page }, info) => {
  test.slow();
  await addPlaceWithRoom(page, 'File house');
  await page.goto('/assessments/import');
  await expectAccessible(page);
  const example = 'public/examples/ordinary-classroom.json';
  await page.getByLabel('File', { exact: true }).setInputFiles(example);
  await page.getByRole('radio', { name: 'File house', exact: true }).check();
  await page.getByRole('button', { name: 'Begin from this file' }).click();
  await expect(faultsOf(page)).toContainText('stays behind');
  await page.getByLabel('File', { exact: true }).setInputFiles(example);
  await page.getByLabel('Take the answers and leave the rest').check();
  await page.getByRole('button', { name: 'Begin from this file' }).click();
  await expect(page.getByText('Every question is answered.')).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Save the document' }).click();
  const file = info.outputPath('saved.json');
  await (await download).saveAs(file);
  expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({ format: 'sandbucket-assessment.v1', site: 'File house' });
  const [saved, original] = await Promise.all([scoreByCommand(file), scoreByCommand(example)]);
  expect(saved.inputHash).toBe(original.inputHash);
  expect(saved.totalHarm).toEqual(original.totalHarm);
});
