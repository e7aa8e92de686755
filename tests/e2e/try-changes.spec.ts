import { expect, test } from '@playwright/test';
import { openExample, scored } from './support/room-page';

const verdict = 'h1';

test('an answer changes the verdict, and undo takes it back', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#q-damaged-outdoors');
  await scored(page);
  await expect(page.locator(verdict)).toHaveText('Do not start. One condition stops it.');
  await page.getByRole('group', { name: /Is there a spot outdoors/ }).getByRole('radio').first().check();
  await expect(page.locator(verdict)).toContainText('No stop condition holds.');
  await expect(page.getByRole('status').filter({ hasText: 'No stop condition holds.' })).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator(verdict)).toHaveText('Do not start. One condition stops it.');
});

test('an answer shows and hides the questions that hang on it', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#answers-room');
  await scored(page);
  const window = page.getByRole('group', { name: 'How large is the opening that stays open?' });
  const fan = page.getByRole('group', { name: 'How much air does the fan move?' });
  await expect(window).toBeVisible();
  await expect(fan).toBeHidden();
  await page.getByRole('group', { name: /How does air get in and out/ }).getByRole('radio', { name: /fan/i }).check();
  await expect(window).toBeHidden();
  await expect(fan).toBeVisible();
});

test('a number that cannot be read stays in its box with the reason, and changes nothing', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#q-room-size');
  await scored(page);
  const reference = page.getByText(/seed \d+, 4,000 draws/);
  const before = await reference.textContent();
  const box = page.getByRole('textbox', { name: 'volume' }).first();
  await box.fill('1,800');
  await box.blur();
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('can be read in two ways')).toBeVisible();
  await expect(box).toHaveValue('1,800');
  expect(await reference.textContent()).toBe(before);
  await box.fill('1800');
  await box.blur();
  await expect(reference).not.toHaveText(String(before));
});

test('a planned action moves the grade after, and the slider the set', async ({ page }) => {
  await openExample(page, 'bad-store');
  const slider = page.getByRole('slider');
  const words = page.locator('#effort-words');
  const at12 = await words.textContent();
  await slider.fill('4');
  await expect(words).not.toHaveText(String(at12));
  await page.getByRole('button', { name: /^Plan these/ }).click();
  await expect(page.locator('#ranking').getByText('once the planned actions are done').first()).toBeVisible();
});

test('a reload of the tab loses nothing', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#q-damaged-outdoors');
  await scored(page);
  await page.getByRole('group', { name: /Is there a spot outdoors/ }).getByRole('radio').first().check();
  await expect(page.locator(verdict)).toContainText('No stop condition holds.');
  await page.reload();
  await expect(page.locator(verdict)).toContainText('No stop condition holds.');
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(page.locator(verdict)).toContainText('Try a room');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator(verdict)).toContainText('No stop condition holds.');
});
