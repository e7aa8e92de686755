import { expect } from '@playwright/test';
import { openExample, scored } from './support/room-page';
import { test } from './support/test';

const verdict = 'h1';
/** The classroom has no place outdoors: one answer settles it. */
const OUTDOORS = '#stop-no-outdoor-spot';

test('an answer changes the verdict, and undo takes it back', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#q-damaged-outdoors');
  await scored(page);
  const before = String(await page.locator(verdict).textContent());
  await expect(page.locator(OUTDOORS)).toBeVisible();
  await page.getByRole('group', { name: /Is there a spot outdoors/ }).getByRole('radio').first().check();
  await expect(page.locator(OUTDOORS)).toHaveCount(0);
  await expect(page.locator(verdict)).not.toHaveText(before);
  await expect(page.getByRole('status').filter({ hasText: String(await page.locator(verdict).textContent()) })).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator(OUTDOORS)).toBeVisible();
  await expect(page.locator(verdict)).toHaveText(before);
});

test('an answer shows and hides the questions that hang on it', async ({ page }) => {
  await page.goto('/try?example=ordinary-classroom#answers-room-air');
  await scored(page);
  const window = page.getByRole('group', { name: 'How large is the gap to outdoors?' });
  const fan = page.getByRole('group', { name: 'How much air does the fan move?' });
  await page.getByRole('group', { name: /How does air get in and out/ }).getByRole('radio', { name: /we can measure the gap/ }).check();
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
  const box = page.getByRole('textbox', { name: 'width' }).first();
  await box.fill('1,234');
  await box.blur();
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('can be read in two ways')).toBeVisible();
  await expect(box).toHaveValue('1,234');
  expect(await reference.textContent()).toBe(before);
  await box.fill('12.34');
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
  await expect(page.locator(OUTDOORS)).toHaveCount(0);
  const changed = String(await page.locator(verdict).textContent());
  await page.reload();
  await expect(page.locator(verdict)).toHaveText(changed);
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(page.locator(verdict)).toContainText('Try a room');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator(verdict)).toHaveText(changed);
});
