import { expect, type Page } from '@playwright/test';

/** Fills in the form of a pack and adds it. */
export async function addPack(page: Page, label: string): Promise<void> {
  await page.goto('/packs/new');
  await page.getByLabel('Label', { exact: true }).fill(label);
  await page.getByLabel('Cells in series').fill('4');
  await page.getByLabel('Capacity').fill('850');
  await page.getByRole('radio', { name: /^4\.20 V/ }).check();
  await page.getByRole('radio', { name: 'No, bought new' }).check();
  await page.getByLabel('Batch').fill('B-26');
  await page.getByRole('button', { name: 'Add the pack' }).click();
  await expect(page.getByRole('heading', { level: 1, name: label })).toBeVisible();
}

/** Answers every sign of the page that is shown. */
export async function answerAll(page: Page, answer: 'Yes' | 'No' = 'No'): Promise<void> {
  for (const radio of await page.getByRole('main').getByRole('radio', { name: answer, exact: true }).all()) await radio.check();
}

/** From the first page of a check to the one of the meter, with no sign on the way. */
export async function checkUpToMeter(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Check it' }).click();
  await expect(page.getByRole('heading', { name: 'Look', exact: true })).toBeVisible();
  await answerAll(page);
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('heading', { name: 'Listen and smell' })).toBeVisible();
  await answerAll(page);
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('heading', { name: 'Warmth' })).toBeVisible();
  await answerAll(page);
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('heading', { name: 'What is known of it' })).toBeVisible();
  await page.getByRole('radio', { name: 'Yes', exact: true }).first().check();
  await page.getByRole('radio', { name: /^Not in the last three days/ }).check();
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('heading', { name: 'Voltage' })).toBeVisible();
}

/** The cells as the meter shows them; finishes the check. */
export async function measure(page: Page, volts: readonly string[]): Promise<void> {
  for (const [at, cell] of volts.entries()) await page.getByLabel(`Cell ${at + 1}`).fill(cell);
  await page.getByRole('button', { name: 'Finish the check' }).click();
}
