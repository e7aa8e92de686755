import { expect, type Page } from '@playwright/test';
import { expectAccessible, expectNoSidewaysScroll } from '../watched-page';

/** A screen of the path, once it is there: it has a title and a heading, everybody can use it, and it fits the window. */
export async function expectGoodScreen(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page).toHaveTitle(/./);
  await expectNoSidewaysScroll(page);
  await expectAccessible(page);
}
