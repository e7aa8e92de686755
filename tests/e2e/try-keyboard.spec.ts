import { expect, type Page } from '@playwright/test';
import { scored } from './support/room-page';
import { test } from './support/test';

/** Presses Tab until something with these words has the focus; a person without a mouse does no other. */
async function tabTo(page: Page, words: RegExp): Promise<void> {
  for (let presses = 0; presses < 200; presses += 1) {
    await page.keyboard.press('Tab');
    const name = await page.evaluate(() => {
      const element = document.activeElement;
      const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : null;
      return label ?? element?.textContent ?? '';
    });
    if (words.test(name)) return;
  }
  throw new Error(`200 presses of Tab do not lead to ${String(words)}`);
}

test('with the keyboard alone: choose a room, move the slider, change an answer', async ({ page }) => {
  // Some hundred presses, one after the other.
  test.slow();
  await page.goto('/try');
  await tabTo(page, /^Ordinary classroom$/);
  await page.keyboard.press('Enter');
  await scored(page);
  await expect(page.locator('main')).toBeFocused();
  await expect(page).toHaveURL(/example=ordinary-classroom/);

  await tabTo(page, /Points of effort/);
  const words = page.locator('#effort-words');
  await expect(words).toContainText('12 points');
  await page.keyboard.press('ArrowLeft');
  // On a slow machine the search ends early, and the step before 12 is further down than 11.
  await expect(words).not.toContainText('12 points');
  await expect(words).toContainText(/\d+ points of effort take away \d+ %/);

  await tabTo(page, /^Damaged packs\d+ of/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('group', { name: /Is there a spot outdoors/ })).toBeVisible();
  await tabTo(page, /No$/);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await scored(page);
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeVisible();
});
