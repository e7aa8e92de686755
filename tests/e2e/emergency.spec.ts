import { expect, type Page } from '@playwright/test';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, watch } from './support/watched-page';

const SMALL_PHONE = { width: 360, height: 640 };
const WAYS = ['', '/missing', '/ill', '/hot', '/puffed-up', '/smell', '/vehicle', '/caller', '/record'];

/** The steps and the number are on the first screen, whole. */
async function expectOnFirstScreen(page: Page): Promise<void> {
  const foot = await page.locator('.steps').evaluate((steps) => steps.getBoundingClientRect().bottom + window.scrollY);
  expect(foot).toBeLessThanOrEqual(SMALL_PHONE.height);
}

test.describe('signed out, without client JavaScript, on a small phone', () => {
  test.use({ viewport: SMALL_PHONE, javaScriptEnabled: false });

  test('the first screen says what to do without scrolling, and names no number of its own', async ({ page }) => {
    await page.goto('/emergency');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Smoke, hiss or flame: everybody out');
    await expect(page.getByRole('listitem').filter({ hasText: 'your local emergency number (not set here)' })).toBeVisible();
    await expect(page.locator('a[href^="tel:"]')).toHaveCount(0);
    await expect(page.getByRole('main').getByRole('textbox')).toHaveCount(0);
  });

  test('a hot pack leads to the same steps and to no form', async ({ page }) => {
    await page.goto('/emergency');
    await page.getByRole('link', { name: /^Hot, hissing/ }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('no smoke yet');
    await expect(page.getByRole('listitem').first()).toContainText('Do not touch, unplug or carry it.');
    await expect(page.getByRole('link', { name: /record/i })).toHaveCount(0);
  });
});

test.describe('signed in, on a small phone', () => {
  test.use({ storageState: stateOf('helper'), viewport: SMALL_PHONE });

  test('the school’s own number can be dialled from the first screen', async ({ page }) => {
    const watched = watch(page);
    await page.goto('/emergency');
    await expect(page.getByRole('link', { name: /^Call/ })).toHaveAttribute('href', 'tel:999');
    await expect(page.getByText('North gate')).toBeVisible();
    await expectOnFirstScreen(page);
    await page.goto('/emergency/hot');
    await expectOnFirstScreen(page);
    expectQuiet(page, watched);
  });

  test('each of its pages can be read by everybody, and leads back to the alarm', async ({ page }) => {
    for (const way of WAYS) {
      await page.goto(`/emergency${way}`);
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      if (way !== '') await expect(page.getByRole('link', { name: 'Smoke, hiss or flame: everybody out' })).toBeVisible();
    }
  });

  test('it opens without a network, with the school’s number, from any page', async ({ page, context }) => {
    await page.goto('/account');
    // Nothing shows on a page when the last of the pages is kept.
    await expect.poll(() => page.evaluate(async () => Boolean(await caches.match('/emergency/record')))).toBe(true);
    await context.setOffline(true);
    await page.goto('/emergency');
    await expect(page.getByRole('link', { name: /^Call/ })).toHaveAttribute('href', 'tel:999');
    await expect(page.locator('.alarm')).toHaveCSS('background-color', 'rgb(168, 42, 6)');
    await page.getByRole('link', { name: 'Somebody is missing' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Somebody is missing');
    await context.setOffline(false);
  });
});

test('a device that was signed in once keeps the school’s number', async ({ browser }) => {
  const { cookies } = await (await browser.newContext({ storageState: stateOf('organiser') })).storageState();
  const context = await browser.newContext();
  await context.addCookies(cookies.filter(({ name }) => name === 'sandbucket.school'));
  const page = await context.newPage();
  await page.goto('/emergency');
  await expect(page.getByRole('link', { name: /^Call/ })).toHaveAttribute('href', 'tel:999');
  await context.clearCookies();
  await context.addCookies(cookies.filter(({ name }) => name === 'sandbucket.school').map((cookie) => ({ ...cookie, value: `${cookie.value}x` })));
  await page.reload();
  await expect(page.locator('a[href^="tel:"]')).toHaveCount(0);
});
