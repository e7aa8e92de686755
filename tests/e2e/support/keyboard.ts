import { expect, type Locator, type Page } from '@playwright/test';

/** More than any of our pages has to stop at. */
const LONGEST_WAY = 300;

/** Presses Tab until this has the focus, as a person without a mouse would. */
export async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await expect(wanted).toHaveCount(1);
  for (let presses = 0; presses < LONGEST_WAY; presses += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${LONGEST_WAY} presses of Tab do not lead to ${String(wanted)}`);
}

/** Goes to a link or a button, sees that it shows where one is, and presses it. */
export async function pressOn(page: Page, wanted: Locator): Promise<void> {
  await tabTo(page, wanted);
  const outline = await wanted.evaluate((element) => getComputedStyle(element).outlineStyle);
  expect(outline, `the focus is seen on ${String(wanted)}`).not.toBe('none');
  await page.keyboard.press('Enter');
}

/** Goes to a field and types into it. */
export async function typeInto(page: Page, wanted: Locator, text: string): Promise<void> {
  await tabTo(page, wanted);
  await page.keyboard.type(text);
}
