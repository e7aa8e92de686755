import { expect } from '@playwright/test';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, watch } from './support/watched-page';

test('the method names its edition and keeps the first one readable', async ({ page }) => {
  const watched = watch(page);
  await page.goto('/method');
  await expect(page.getByRole('complementary', { name: 'Versions' })).toContainText('Edition 2');
  await page.locator('#editions').getByRole('link', { name: 'Edition 1' }).click();
  await expect(page.getByRole('heading', { name: 'This is edition 1, which is no longer in force' })).toBeVisible();
  await expect(page.getByRole('complementary', { name: 'Versions' })).toContainText('Content 0.1.0');
  await expectAccessible(page);
  expectQuiet(page, watched);
});

test('each guidance text stands on a page of its own and says who must still confirm it', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto('/method');
  await page.locator('#guidance').getByRole('link', { name: 'Isolating a pack' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Isolating a pack' })).toBeVisible();
  await expect(page.getByRole('main')).toContainText('To be confirmed by the local fire service and first-aid trainer.');
  await expectNoSidewaysScroll(page);
  await expectAccessible(page);
});

test('a guidance text that does not exist is not found', async ({ request }) => {
  expect((await request.get('/method/guidance/nonsense')).status()).toBe(404);
});
