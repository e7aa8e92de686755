import { expect } from '@playwright/test';
import { ROLES } from '@/lib/access/roles';
import { addPack } from './support/pack-pages';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, watch } from './support/watched-page';

test.use({ viewport: { width: 360, height: 740 } });

for (const role of ROLES) {
  test.describe(`as ${role}`, () => {
    test.use({ storageState: stateOf(role) });

    test('Today opens, names the number to call, and fits a phone', async ({ page }) => {
      const watched = watch(page);
      await page.goto('/today');
      await expect(page.getByRole('main').getByRole('link', { name: '999' })).toHaveAttribute('href', 'tel:999');
      await expect(page.getByText('North gate')).toBeVisible();
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
      expectQuiet(page, watched);
    });
  });
}

test.describe('an isolated pack', () => {
  test.use({ storageState: stateOf('organiser') });

  test('presses until somebody has said where it lies, for everybody', async ({ page, browser }) => {
    test.slow();
    await addPack(page, 'TD-01');
    const address = page.url();
    await page.locator('summary', { hasText: 'Mark isolated' }).click();
    const form = page.locator('#to-isolated');
    await form.getByRole('radio', { name: /^It showed a sign itself/ }).check();
    await form.getByLabel('Reason').fill('Dented');
    await form.getByRole('button', { name: 'Mark isolated' }).click();
    await expect(page.getByRole('heading', { name: 'Isolate now' })).toBeVisible();
    const helper = await (await browser.newContext({ storageState: stateOf('helper') })).newPage();
    await helper.goto('/today');
    // With many of them Today names the first few, and leads to the list of all.
    await expect(helper.getByRole('list', { name: 'Now' })).toContainText('Isolate now');
    await helper.goto('/packs?find=TD-01');
    await expect(helper.getByRole('row', { name: 'TD-01' })).toContainText('isolate now');
    await page.goto(address);
    await page.getByRole('radio', { name: 'Outdoor spot' }).check();
    await page.getByRole('radio', { name: 'Yes', exact: true }).check();
    await page.getByRole('button', { name: 'Save where it is' }).click();
    await expect(page.getByRole('heading', { name: 'Isolated', exact: true })).toBeVisible();
    await helper.reload();
    await expect(helper.getByRole('row', { name: 'TD-01' })).toBeVisible();
    await expect(helper.getByRole('row', { name: 'TD-01' })).not.toContainText('isolate now');
  });
});

test.describe('a school in which nothing is yet', () => {
  test.use({ storageState: stateOf('other-school') });

  test('is led through its first steps', async ({ page }) => {
    await page.goto('/today');
    await expect(page.getByRole('heading', { level: 1, name: 'What to do first' })).toBeVisible();
    await expect(page.getByRole('region', { name: 'To be seen to' }).getByRole('listitem')).toHaveText([/Invite a second person/, /Describe your place/, /Add your packs/, /Begin an assessment/]);
    await expectAccessible(page);
  });
});
