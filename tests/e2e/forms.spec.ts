import { expect } from '@playwright/test';
import { stateOf } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectQuiet, faultsOf, watch } from './support/watched-page';

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

test.describe('a form that is looked at in the browser', () => {
  test.use({ storageState: stateOf('organiser') });
  const SHORT = 'Enter the number as it is dialled there: at least 3 digits';

  test('says a fault at the field when it is left and all of them on sending, by itself, and takes each back when it is mended', async ({ page }) => {
    const watched = watch(page);
    await page.goto('/places/new');
    const number = page.getByLabel('Number to call when there is a fire');
    await number.pressSequentially('9');
    await expect(page.getByText(SHORT)).toHaveCount(0);
    await number.press('Tab');
    await expect(page.getByText(SHORT)).toBeVisible();
    await expect(number).toHaveAttribute('aria-invalid', 'true');
    await expect(number).toHaveAccessibleDescription(new RegExp(SHORT));
    await expect(faultsOf(page)).toHaveCount(0);
    await page.getByRole('button', { name: 'Add the place' }).click();
    await expect(faultsOf(page)).toBeFocused();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(4);
    await expectAccessible(page);
    await number.fill('999');
    await expect(number).not.toHaveAttribute('aria-invalid');
    await expect(number).toHaveValue('999');
    expect(watched.requests.filter((request) => request.method() === 'POST')).toEqual([]);
    expectQuiet(page, watched);
  });

  test('moves nothing away from under a pointer that presses', async ({ page }) => {
    await page.goto('/places/new');
    await page.getByLabel('Name', { exact: true }).focus();
    const choice = page.getByText(/^Our own school/).first();
    const box = await choice.boundingBox();
    if (box === null) throw new Error('The choice stands on the page');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.evaluate(() => new Promise((resolve) => { setTimeout(resolve, 300); }));
    await expect(page.getByText('Enter a name, such as')).toHaveCount(0);
    await page.mouse.up();
    await expect(page.getByText('Enter a name, such as')).toBeVisible();
    await expect(page.getByRole('radio').first()).toBeChecked();
  });

  test('takes a fault back that was mended at another field', async ({ page }) => {
    await page.goto('/packs/new');
    const energy = page.getByLabel('Energy, if it is printed');
    await page.getByLabel('Label', { exact: true }).fill('F-1');
    await page.getByLabel('Cells in series').fill('4');
    await page.getByLabel('Capacity').fill('850');
    await page.getByRole('radio', { name: /^4\.20 V/ }).check();
    await page.getByRole('radio', { name: 'No, bought new' }).check();
    await energy.fill('126');
    await energy.press('Tab');
    await expect(energy).toHaveAttribute('aria-invalid', 'true');
    await page.getByLabel('Capacity').fill('4500');
    await expect(energy).toHaveAttribute('aria-invalid', 'true');
    await page.getByLabel('Cells side by side').fill('2');
    await expect(energy).not.toHaveAttribute('aria-invalid');
  });

  test('without client JavaScript says the same from the server', async ({ browser }) => {
    const page = await (await browser.newContext({ javaScriptEnabled: false, storageState: stateOf('organiser') })).newPage();
    await page.goto('/places/new');
    await page.getByLabel('Number to call when there is a fire').fill('9');
    await page.getByRole('button', { name: 'Add the place' }).click();
    await expect(faultsOf(page).getByRole('link')).toHaveCount(4);
    await expect(faultsOf(page).getByRole('link', { name: SHORT })).toBeVisible();
    await expect(page.getByLabel('Number to call when there is a fire')).toHaveAccessibleDescription(new RegExp(SHORT));
    await expect(page.getByLabel('Number to call when there is a fire')).toHaveValue('9');
    await page.context().close();
  });
});

test.describe('a form that was done and stays', () => {
  test.use({ storageState: stateOf('safety-officer') });

  test('is one nobody has touched yet: no fault while one types', async ({ page }) => {
    const WRONG = 'Write the address with an @';
    await page.goto('/people');
    const form = page.locator('#invite-form');
    const email = form.getByLabel('Their e-mail, if you know it');
    await form.getByLabel('Who is it for?').fill('A visitor');
    await email.fill('visitor');
    await form.getByRole('radio').last().check();
    await form.getByRole('button', { name: 'Make a link' }).click();
    await expect(faultsOf(page)).toContainText(WRONG);
    await expect(email).toHaveValue('visitor');
    await email.pressSequentially('@x.example');
    await expect(email).not.toHaveAttribute('aria-invalid');
    await form.getByRole('button', { name: 'Make a link' }).click();
    await expect(email).toHaveValue('');
    await expect(faultsOf(page)).toHaveCount(0);
    await email.pressSequentially('an');
    await expect(email).toHaveValue('an');
    await expect(email).not.toHaveAttribute('aria-invalid');
    await email.press('Tab');
    await expect(email).toHaveAttribute('aria-invalid', 'true');
  });
});
