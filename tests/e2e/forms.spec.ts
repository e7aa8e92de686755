import { expect } from '@playwright/test';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';

const ON_ITS_WAY_MS = 1500;

test.describe('a form on its way', () => {
  test.use({ storageState: stateOf('safety-officer') });

  test('keeps what is typed meanwhile, and the place one types at, when it was saved and when it comes back', async ({ page }) => {
    await page.goto('/school');
    await page.route('**/school', async (route) => {
      if (route.request().method() === 'POST') await new Promise((resolve) => { setTimeout(resolve, ON_ITS_WAY_MS); });
      await route.continue();
    });
    const [place, second, save] = [page.getByLabel('Where everybody meets outside'), page.getByLabel(/^Second meeting place/), page.getByRole('button', { name: 'Save', exact: true })];
    const [before, other] = [await place.inputValue(), 'Far field'];
    await save.click();
    await second.pressSequentially(other);
    await expect(page.getByText('Saved.')).toBeVisible();
    await expect(second).toHaveValue(new RegExp(other));
    await expect(second).toBeFocused();
    await expect(place).toHaveValue(before);
    await page.getByLabel('Number to call when there is a fire').fill('');
    await save.click();
    await second.fill('By the road');
    await expect(page.getByRole('link', { name: 'Write the number you call when there is a fire' })).toBeVisible();
    await expect(second).toHaveValue('By the road');
    await expect(page.getByLabel('Number to call when there is a fire')).toHaveValue('');
  });
});
